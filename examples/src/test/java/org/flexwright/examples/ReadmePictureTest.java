package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.input.BriefReader;
import org.flexwright.examples.brief.report.BriefFiles;
import org.flexwright.testing.BuildFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's picture is the first plot of the report, never an older one. */
class ReadmePictureTest {

  private static final String PICTURE = "examples/picture/bellows-neck.svg";

  @Test
  void pictureIsTheOneOfTheReport(@TempDir Path folder) throws IOException {
    Path brief = Path.of("src/main/resources/org/flexwright/examples/brief/bottling-line.json");
    BriefFiles.write(BriefAnswer.of(BriefReader.read(brief)), folder);
    Matcher plot =
        Pattern.compile("<svg (viewBox.*?</svg>)", Pattern.DOTALL)
            .matcher(Files.readString(folder.resolve("report.html")));
    assertThat(plot.find()).isTrue();
    String picture =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" font-family=\"sans-serif\" font-size=\"14\""
            + " style=\"background:#fff\" "
            + plot.group(1)
            + "\n";
    Path file = BuildFolders.root().resolve(PICTURE);
    if (Boolean.getBoolean("api.update")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, picture);
    }
    assertThat(file).as("run with -Dapi.update=true to renew it").content().isEqualTo(picture);
    assertThat(BuildFolders.root().resolve("README.md")).content().contains(PICTURE);
  }
}
