package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import witnessmark.wording.Texts;

/** Every library that goes into the program is named on the About page with its licence. */
class AboutLicencesTest {
    private static final Pattern DEPENDENCY = Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);
    private static final Pattern ARTIFACT = Pattern.compile("<artifactId>(.*?)</artifactId>");

    @Test
    void what_the_build_bundles_is_what_the_page_names() throws IOException {
        String page = named();
        List<String> missing = new ArrayList<>();
        Matcher matcher = DEPENDENCY.matcher(bundled());
        while (matcher.find()) {
            Matcher artifact = ARTIFACT.matcher(matcher.group(1));
            if (artifact.find() && !matcher.group(1).contains("<scope>test</scope>")) {
                String name = artifact.group(1).split("-", -1)[0].replace("flatlaf-fonts", "");
                if (!page.contains(name.toLowerCase(Locale.ROOT))) {
                    missing.add(artifact.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    private static String bundled() throws IOException {
        String pom = Files.readString(Path.of(System.getProperty("project.basedir", "."), "pom.xml"));
        String own = pom.substring(pom.indexOf("</dependencyManagement>"));
        return own.substring(own.indexOf("<dependencies>"), own.indexOf("</dependencies>"));
    }

    private static String named() {
        Texts texts = Texts.in(Locale.UK);
        StringBuilder all = new StringBuilder();
        for (int i = 1; texts.has("shell.about.library." + i); i++) {
            assertThat(texts.get("shell.about.licence." + i)).isNotBlank();
            all.append(texts.get("shell.about.library." + i)).append('\n');
        }
        return all.toString().toLowerCase(Locale.ROOT).replace("java uuid", "java java-uuid");
    }
}
