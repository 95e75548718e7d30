package counterset.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A catalogue directory of a few lines that tests change one file of. */
final class SmallCatalogue {

  private final Path directory;

  private SmallCatalogue(Path directory) {
    this.directory = directory;
  }

  static SmallCatalogue empty(Path directory) {
    return new SmallCatalogue(directory);
  }

  static SmallCatalogue in(Path directory) {
    return empty(directory)
        .with(
            "muscles.json",
            """
            [{"id": "quadriceps", "name": "Quadriceps", "region": "lower", "aspect": "front", "opposes": ["hamstrings"]},
             {"id": "hamstrings", "name": "Hamstrings", "region": "lower", "aspect": "back", "opposes": ["quadriceps"]},
             {"id": "shins", "name": "Shins", "region": "lower", "aspect": "front", "opposes": [], "defaultTarget": false}]
            """)
        .with(
            "equipment.json",
            """
            [{"id": "dumbbell", "name": "Dumbbell", "kind": "held", "putOnSeconds": 3, "takeOffSeconds": 2},
             {"id": "ankle-weights", "name": "Ankle weights", "kind": "worn", "putOnSeconds": 20, "takeOffSeconds": 12},
             {"id": "mat", "name": "Mat", "kind": "placed", "putOnSeconds": 5, "takeOffSeconds": 3, "comfortIn": ["supine"]},
             {"id": "wall", "name": "Wall", "kind": "fixed", "putOnSeconds": 0, "takeOffSeconds": 0}]
            """)
        .with(
            "limitations.json",
            """
            [{"id": "sore-knees", "name": "Sore knees", "maxDemand": {"knee": 1}, "avoidTraits": ["jump"],
              "avoidPositions": [], "caution": "Be gentle.", "source": "Common practice, no source"}]
            """)
        .with(
            "exercises/squats.json",
            "[" + exercise("squat", "") + ",\n" + exercise("wide-squat", "") + "]");
  }

  /**
   * A main exercise with further or changed properties, written as JSON with a comma before each.
   */
  static String exercise(String id, String more) {
    String json =
        """
        {"id": "%s", "name": "Move", "part": "main", "pattern": "squat", "family": "squat", "multiJoint": true,
         "intensity": 2, "level": 1, "primary": ["quadriceps"], "sides": "bilateral", "position": "standing",
         "demand": {"knee": 2}, "demandSource": "common-practice", "traits": [],
         "met": {"code": "02052", "edition": 2024, "value": 5.0}, "setup": "Stand.", "cues": ["Go."]%s}"""
            .formatted(id, more);
    for (String name : new String[] {"part", "family", "sides", "level", "traits", "primary"}) {
      if (more.contains("\"" + name + "\"")) {
        json = json.replaceFirst("\"" + name + "\": (\\[[^]]*]|[^,]*),\\s*", "");
      }
    }
    return json;
  }

  SmallCatalogue with(String file, String text) {
    try {
      Path path = directory.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  SmallCatalogue without(String file) {
    try {
      Files.delete(directory.resolve(file));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
