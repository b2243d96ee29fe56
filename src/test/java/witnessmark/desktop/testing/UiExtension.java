package witnessmark.desktop.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.junit.platform.commons.support.AnnotationSupport;

/** Carries out what {@link UiTest} promises. */
public final class UiExtension
        implements ExecutionCondition, BeforeEachCallback, AfterEachCallback, InvocationInterceptor {
    private final EventThreadGuard guard = new EventThreadGuard();
    private final ComplaintsOfLook complaints = new ComplaintsOfLook();
    private final List<Throwable> uncaught = Collections.synchronizedList(new ArrayList<>());

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (!needsDisplay(context) || !GraphicsEnvironment.isHeadless()) {
            return ConditionEvaluationResult.enabled("has what it needs");
        }
        return Boolean.getBoolean("ui.required")
                ? ConditionEvaluationResult.enabled("a display is required: it will fail without one")
                : ConditionEvaluationResult.disabled("no display");
    }

    @Override
    public void beforeEach(ExtensionContext context) throws Exception {
        if (needsDisplay(context)) {
            assertThat(GraphicsEnvironment.isHeadless())
                    .as("no display, and -Dui.required=true")
                    .isFalse();
        }
        guard.forget();
        uncaught.clear();
        complaints.listen();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> uncaught.add(failure));
        SwingUtilities.invokeAndWait(() -> {
            RepaintManager.setCurrentManager(guard);
            Looks.atLeastLight();
        });
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        List<String> open = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            Arrays.stream(Window.getWindows()).filter(Window::isShowing).forEach(window -> {
                open.add(window.toString());
                window.dispose();
            });
            RepaintManager.setCurrentManager(null);
        });
        Thread.setDefaultUncaughtExceptionHandler(null);
        assertThat(complaints.stop()).as("what the look complained of").isEmpty();
        assertThat(guard.violations())
                .as("components touched off the event thread")
                .isEmpty();
        assertThat(uncaught).as("errors nobody caught").isEmpty();
        assertThat(open).as("windows left open").isEmpty();
    }

    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> method, ExtensionContext context)
            throws Throwable {
        onEventThread(invocation);
    }

    @Override
    public void interceptTestTemplateMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> method, ExtensionContext context)
            throws Throwable {
        onEventThread(invocation);
    }

    @Override
    public void interceptBeforeEachMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> method, ExtensionContext context)
            throws Throwable {
        onEventThread(invocation);
    }

    @Override
    public void interceptAfterEachMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> method, ExtensionContext context)
            throws Throwable {
        onEventThread(invocation);
    }

    private static void onEventThread(Invocation<Void> invocation) throws Throwable {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        SwingUtilities.invokeAndWait(() -> {
            try {
                invocation.proceed();
            } catch (Throwable failure) {
                thrown.set(failure);
            }
        });
        if (thrown.get() != null) {
            throw thrown.get();
        }
    }

    private static boolean needsDisplay(ExtensionContext context) {
        return context.getElement()
                .flatMap(element -> AnnotationSupport.findAnnotation(element, UiTest.class))
                .or(() -> context.getTestClass().flatMap(type -> AnnotationSupport.findAnnotation(type, UiTest.class)))
                .map(UiTest::display)
                .orElse(false);
    }
}
