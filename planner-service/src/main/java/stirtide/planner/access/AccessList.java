package stirtide.planner.access;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tokens and codes that were given, as the file keeps them. It holds digests only, no secrets.
 *
 * @param tokens all tokens ever made, revoked ones too
 * @param people who may sign on at a terminal with a code
 */
public record AccessList(List<Token> tokens, List<Person> people) {
    /** Nobody has a token or code. */
    public static final AccessList EMPTY = new AccessList(List.of(), List.of());

    /**
     * A bearer token.
     *
     * @param tokenId public part of the token, 12 characters
     * @param name person id, or name of the terminal or program
     * @param role what it may do
     * @param salonId its only salon, empty for all
     * @param sha256 digest of the whole token in hexadecimal
     * @param made when it was made
     * @param expires when it ends
     * @param revoked when it was taken back, if it was
     */
    @RecordBuilder
    public record Token(
            String tokenId,
            String name,
            Role role,
            Optional<String> salonId,
            String sha256,
            Instant made,
            Instant expires,
            Optional<Instant> revoked)
            implements AccessListTokenBuilder.With {}

    /**
     * A person with a sign-on code.
     *
     * @param personId who
     * @param role assistant, colorist or manager
     * @param salonId the only salon, empty for all
     * @param salt of the code, hexadecimal
     * @param digest PBKDF2 of the code, hexadecimal
     * @param rounds rounds of PBKDF2
     * @param expires when the code ends
     */
    public record Person(
            String personId,
            Role role,
            Optional<String> salonId,
            String salt,
            String digest,
            int rounds,
            Instant expires) {}

    public AccessList {
        tokens = List.copyOf(tokens);
        people = List.copyOf(people);
    }

    /** Whether any token is valid at an instant. */
    public boolean hasValidToken(Instant now) {
        return tokens.stream()
                .anyMatch(token -> token.revoked().isEmpty() && token.expires().isAfter(now));
    }

    Optional<Token> token(String tokenId) {
        return tokens.stream().filter(token -> token.tokenId().equals(tokenId)).findFirst();
    }

    Optional<Person> person(String personId) {
        return people.stream()
                .filter(person -> person.personId().equals(personId))
                .findFirst();
    }

    AccessList with(Token token) {
        List<Token> more = new ArrayList<>(tokens);
        more.removeIf(known -> known.tokenId().equals(token.tokenId()));
        more.add(token);
        return new AccessList(more, people);
    }

    AccessList with(Person person) {
        List<Person> more = new ArrayList<>(without(person.personId()).people);
        more.add(person);
        return new AccessList(tokens, more);
    }

    AccessList without(String personId) {
        return new AccessList(
                tokens,
                people.stream()
                        .filter(known -> !known.personId().equals(personId))
                        .toList());
    }
}
