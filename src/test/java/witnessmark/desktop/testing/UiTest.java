package witnessmark.desktop.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test of components. Its methods run on the event thread under the light theme at normal size; touching a component
 * from another thread, an error nobody caught and a window left open fail it.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(UiExtension.class)
public @interface UiTest {
    /** Whether it needs a display: then it is skipped without one, or fails when {@code -Dui.required=true}. */
    boolean display() default false;
}
