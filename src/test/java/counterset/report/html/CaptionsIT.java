package counterset.report.html;

import counterset.model.Plan;
import counterset.report.Hostile;
import counterset.report.Plans;
import counterset.report.vtt.Captions;
import counterset.report.vtt.Chapters;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Captions and chapters, read by the parser of a browser. */
class CaptionsIT {

  @Test
  void aBrowserReadsEveryCue() throws Exception {
    Browser.prepare();
    Path folder = Files.createDirectories(Browser.FOLDER.resolve("captions"));
    List<Path> files = new ArrayList<>();
    for (Map.Entry<String, Plan> plan : Plans.all().entrySet()) {
      files.add(
          Files.writeString(
              folder.resolve(plan.getKey() + ".vtt"),
              Captions.of(plan.getValue(), Plans.CATALOGUE)));
      files.add(
          Files.writeString(
              folder.resolve(plan.getKey() + ".chapters.vtt"), Chapters.of(plan.getValue())));
    }
    files.add(
        Files.writeString(
            folder.resolve("hostile.vtt"), Captions.of(Hostile.plan(), Hostile.catalogue())));
    Browser.check("captions", files.toArray(Path[]::new));
  }
}
