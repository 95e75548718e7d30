package counterset.quality;

import counterset.model.Catalogue;
import counterset.quality.Spoiled.Kind;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How often a reference ranks above itself with one fault in it. */
record OrderResult(List<Mapped> judged, List<Spoiled> faults) {

  private static final int SHOWN = 80;

  static OrderResult of(List<Mapped> references, Catalogue catalogue) {
    List<Mapped> judged = references.stream().filter(Mapped::isWhole).toList();
    return new OrderResult(
        judged,
        judged.stream()
            .flatMap(
                it ->
                    Stream.concat(
                        new PlaceFaults(it, catalogue).all(),
                        new OrderFaults(it, it.judged(catalogue)).all()))
            .toList());
  }

  private List<Spoiled> of(Kind kind) {
    return faults.stream().filter(it -> it.kind() == kind).toList();
  }

  /** The percentage of faults of a kind that rank below the reference. */
  double share(Kind kind) {
    return percent(of(kind), Spoiled::isRankedBelow);
  }

  /** The mean of all kinds, so that each weighs the same however many cases it has. */
  double share() {
    return Arrays.stream(Kind.values()).mapToDouble(this::share).average().orElseThrow();
  }

  /** The same without the rules, some of which references break: a changeover of 8 s, a level. */
  double shareWithoutRules() {
    return Arrays.stream(Kind.values())
        .mapToDouble(kind -> percent(of(kind), Spoiled::isBelowWithoutRules))
        .average()
        .orElseThrow();
  }

  private static double percent(List<Spoiled> of, Predicate<Spoiled> which) {
    return 100.0 * of.stream().filter(which).count() / of.size();
  }

  /** Shares by kind. */
  String summary() {
    return String.format(
        Locale.ROOT,
        "References judged: %d%n%sMean of the kinds: %.1f%n",
        judged.size(),
        Arrays.stream(Kind.values()).map(this::line).collect(Collectors.joining()),
        share());
  }

  /** Shares by kind, the constraints that let faults win, and the cases that failed. */
  String text() {
    return summary()
        + "\n"
        + Arrays.stream(Kind.values()).map(this::failures).collect(Collectors.joining("\n"));
  }

  private String line(Kind kind) {
    return String.format(
        Locale.ROOT,
        "%-40s %5.1f of 100, rules aside %5.1f (%d cases)%n",
        kind.words,
        share(kind),
        percent(of(kind), Spoiled::isBelowWithoutRules),
        of(kind).size());
  }

  private String failures(Kind kind) {
    List<Spoiled> failed = of(kind).stream().filter(it -> !it.isRankedBelow()).toList();
    Map<String, Integer> decides = new TreeMap<>();
    failed.forEach(it -> decides.merge(first(it), 1, Integer::sum));
    return kind.words
        + ", not ranked below: "
        + failed.size()
        + "\n  by the constraint that gains most: "
        + decides.entrySet().stream()
            .sorted(Comparator.comparing(it -> -it.getValue()))
            .map(it -> it.getKey() + " " + it.getValue())
            .collect(Collectors.joining(", "))
        + "\n"
        + failed.stream().limit(SHOWN).map(OrderResult::failure).collect(Collectors.joining());
  }

  private static String first(Spoiled fault) {
    return fault.gains().isEmpty() ? "no difference" : fault.gains().get(0).constraint();
  }

  private static String failure(Spoiled fault) {
    return "  "
        + fault.reference()
        + ": "
        + fault.what()
        + ": "
        + fault.gains().stream()
            .map(it -> it.constraint() + " " + it.points())
            .collect(Collectors.joining(", "))
        + "\n";
  }
}
