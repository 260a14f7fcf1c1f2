package stirtide.bar.client;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ServiceClientTest {
    @Test
    void the_names_of_days_are_found_in_the_list_of_the_contract() {
        String list = "{\"days\":[{\"day\":\"larch-lane/2027-05-12\",\"revision\":9},"
                + "{\"day\":\"larch-lane/2027-05-13\",\"revision\":4}]}";
        assertThat(ServiceClient.dayNames(list)).containsExactly("larch-lane/2027-05-12", "larch-lane/2027-05-13");
        assertThat(ServiceClient.dayNames("[]")).isEmpty();
    }
}
