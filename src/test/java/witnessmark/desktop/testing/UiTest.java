package witnessmark.desktop.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * A test of components. Its methods run on the event thread under the light theme at normal size; touching a component
 * from another thread, an error nobody caught and a window left open fail it. Such tests run one after another, since
 * they share one look and one display; other test classes may run beside them.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(UiExtension.class)
@Execution(ExecutionMode.SAME_THREAD)
public @interface UiTest {
    /** Whether it needs a display: then it is skipped without one, or fails when {@code -Dui.required=true}. */
    boolean display() default false;
}
