package stirtide.events.setup;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.Optional;
import java.util.SortedMap;

/**
 * One piece of a day's setup, whole: a piece with the id of one that is there replaces it in its place, another is added
 * at the end.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
@JsonSubTypes({
    @JsonSubTypes.Type(value = SetupPiece.Basics.class, name = "Basics"),
    @JsonSubTypes.Type(value = SetupPiece.OnePerson.class, name = "OnePerson"),
    @JsonSubTypes.Type(value = SetupPiece.OneScale.class, name = "OneScale"),
    @JsonSubTypes.Type(value = SetupPiece.OneBowlSize.class, name = "OneBowlSize"),
    @JsonSubTypes.Type(value = SetupPiece.OneDeveloper.class, name = "OneDeveloper"),
    @JsonSubTypes.Type(value = SetupPiece.OneLightener.class, name = "OneLightener"),
    @JsonSubTypes.Type(value = SetupPiece.OneMenuEntry.class, name = "OneMenuEntry"),
    @JsonSubTypes.Type(value = SetupPiece.HairFactors.class, name = "HairFactors"),
    @JsonSubTypes.Type(value = SetupPiece.TakenOut.class, name = "TakenOut"),
})
public sealed interface SetupPiece {
    /**
     * What the salon is as a whole. Its id, zone and currency stay as the day was opened.
     *
     * @param name name shown on screens
     * @param chairs number of chairs, numbered from 1
     * @param handOverMinutes minutes from the end of mixing until the bowl is at the chair, 0 or more
     * @param washMinutes minutes until an emptied bowl can be used again, 0 or more
     * @param oneMixTwoBowls whether two bowls of different clients may be one mix; empty leaves it as it is
     * @param mixerCarries whether who mixed a bowl is busy until it is at the chair; empty leaves it as it is
     */
    record Basics(
            String name,
            int chairs,
            int handOverMinutes,
            int washMinutes,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Boolean> oneMixTwoBowls,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Boolean> mixerCarries)
            implements SetupPiece {}

    /** A person with the hours of the day. */
    record OnePerson(Person person) implements SetupPiece {}

    /** A scale. */
    record OneScale(Scale scale) implements SetupPiece {}

    /** A size of bowl. */
    record OneBowlSize(BowlSize bowlSize) implements SetupPiece {}

    /** A developer, with its pack and price. */
    record OneDeveloper(Developer developer) implements SetupPiece {}

    /** A lightener: the maker's directions, its pack and price. */
    record OneLightener(Directions directions) implements SetupPiece {}

    /** A bookable service. */
    record OneMenuEntry(Menu.MenuEntry entry) implements SetupPiece {}

    /**
     * The factors that fit grams to hair; both lists replace those before.
     *
     * @param lengthPermille by hair length, in thousandths
     * @param densityPermille by hair density, in thousandths
     */
    record HairFactors(SortedMap<String, Integer> lengthPermille, SortedMap<String, Integer> densityPermille)
            implements SetupPiece {}

    /** A piece is taken out of the setup. */
    record TakenOut(Kind kind, String id) implements SetupPiece {}

    /** What can be taken out. */
    enum Kind {
        PERSON,
        SCALE,
        BOWL_SIZE,
        DEVELOPER,
        LIGHTENER,
        MENU_ENTRY
    }
}
