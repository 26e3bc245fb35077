package stretchwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** The named holds exist, whichever of the two types is met first. */
class HoldTest {
    @Test
    void theNamesAreThereWhenAHoldIsMetBeforeItsInterface() throws ReflectiveOperationException {
        Fresh fresh = new Fresh();
        Class.forName("stretchwright.pattern.Hold$Named", true, fresh);
        Class<?> hold = Class.forName("stretchwright.pattern.Hold", true, fresh);
        for (String name : new String[] {"LIGHT", "MEDIUM", "FIRM"}) {
            assertThat(hold.getField(name).get(null)).as(name).isNotNull();
        }
    }

    /** Loads the holds anew, so that the order in which they are made is this test's own. */
    private static final class Fresh extends ClassLoader {
        private Fresh() {
            super(HoldTest.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (!name.startsWith("stretchwright.pattern.Hold")) {
                return super.loadClass(name, resolve);
            }
            Class<?> loaded = findLoadedClass(name);
            if (loaded != null) {
                return loaded;
            }
            try (InputStream in = getResourceAsStream(name.replace('.', '/') + ".class")) {
                if (in == null) {
                    throw new ClassNotFoundException(name);
                }
                byte[] bytes = in.readAllBytes();
                return defineClass(name, bytes, 0, bytes.length);
            } catch (IOException e) {
                throw new ClassNotFoundException(name, e);
            }
        }
    }
}
