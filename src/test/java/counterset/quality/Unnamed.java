package counterset.quality;

import counterset.quality.Reference.Written;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The places of the references that the catalogue has no exercise for, or not as written. */
record Unnamed(Map<String, Integer> missing, Map<String, Integer> otherwise, int places) {

  static Unnamed of(List<Reference> references, ReferenceNames names) {
    Map<String, Integer> missing = new TreeMap<>();
    Map<String, Integer> otherwise = new TreeMap<>();
    int places = 0;
    for (Reference reference : references) {
      for (Written place : reference.supersets().stream().flatMap(List::stream).toList()) {
        places++;
        names
            .find(place)
            .ifPresentOrElse(
                found -> {
                  if (!found.exact()) {
                    otherwise.merge(place + " read as " + found.exercise().id(), 1, Integer::sum);
                  }
                },
                () -> missing.merge(place + ": " + names.lack(place), 1, Integer::sum));
      }
    }
    return new Unnamed(missing, otherwise, places);
  }

  /** The lists, most frequent first. */
  String text() {
    return "Places: "
        + places
        + "\nWithout an exercise: "
        + sum(missing)
        + "\n"
        + lines(missing)
        + "\nWith other equipment: "
        + sum(otherwise)
        + "\n"
        + lines(otherwise);
  }

  private static int sum(Map<String, Integer> counts) {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  private static String lines(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .sorted(Comparator.comparing(it -> -it.getValue()))
        .map(it -> String.format("%3d  %s%n", it.getValue(), it.getKey()))
        .collect(Collectors.joining());
  }
}
