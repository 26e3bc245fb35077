package stretchwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class HoldTest {
    /** With a default method a hold is null where its words are asked for first (Java Language Specification 12.4.1). */
    @Test
    void itHasNoDefaultMethod() {
        assertThat(Arrays.stream(Hold.class.getMethods()).filter(Method::isDefault))
                .isEmpty();
        assertThat(Hold.MEDIUM).isSameAs(Hold.Named.MEDIUM);
    }
}
