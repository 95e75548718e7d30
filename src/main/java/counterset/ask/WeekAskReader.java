package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads the one-line asks of a coach for a week with the names of one catalogue. Immutable and safe
 * to share.
 *
 * <p>{@link WeekParts} cuts the ask by days. Each day is then read as {@link AskReader} reads the
 * ask for a session, with what holds for all days and what holds for this one. Minutes, targets,
 * level and lengths that a day says itself go before those of all days.
 */
public final class WeekAskReader {

  private final AskReader reader;

  public WeekAskReader(Catalogue catalogue) {
    Vocabulary vocabulary = Vocabulary.of(catalogue);
    DayNames.addTo(vocabulary);
    this.reader = new AskReader(catalogue, vocabulary);
  }

  /** Reads an ask; never throws, whatever it is. */
  public WeekAskReading read(String ask) {
    WeekDraft week = new WeekDraft();
    if (AskReader.isTooLong(ask, week.faults)) {
      return refused(week.faults.faults());
    }
    Words words = new Words(ask, new Tokenizer(ask, week.faults).tokens());
    WeekParts parts = WeekParts.read(words, week);
    Set<DayOfWeek> days = days(parts.days(), week);
    Map<DayOfWeek, AskReading> readings = new EnumMap<>(DayOfWeek.class);
    // Without a day the rest is read all the same, so that all faults are found in one run.
    for (DayOfWeek day : days.isEmpty() ? EnumSet.of(DayOfWeek.MONDAY) : days) {
      readings.put(day, read(words, parts, day, Math.max(1, days.size())));
    }
    Set<AskFault> faults = new LinkedHashSet<>(week.faults.faults());
    readings.values().forEach(reading -> faults.addAll(reading.faults()));
    return faults.isEmpty()
        ? accepted(Assembly.title(ask), week, parts.days().isEmpty(), readings)
        : refused(faults);
  }

  private static WeekAskReading refused(Iterable<AskFault> faults) {
    List<AskFault> sorted = new ArrayList<>();
    faults.forEach(sorted::add);
    sorted.sort(Comparator.comparingInt(AskFault::column));
    return new WeekAskReading(Optional.empty(), List.of(), sorted);
  }

  private static WeekAskReading accepted(
      String title, WeekDraft week, boolean spread, Map<DayOfWeek, AskReading> readings) {
    boolean rule = week.recoveryIsRule.or(false);
    List<WeekSession> sessions = new ArrayList<>();
    Map<DayOfWeek, List<String>> echoes = new EnumMap<>(DayOfWeek.class);
    readings.forEach(
        (day, reading) -> {
          sessions.add(new WeekSession(day, reading.problem().orElseThrow()));
          echoes.put(day, reading.echo());
        });
    long seed = sessions.get(0).problem().seed();
    WeekProblem problem =
        new WeekProblem(title, sessions, List.of(), Map.of(), rule, Map.of(), seed);
    return new WeekAskReading(
        Optional.of(problem), WeekEcho.lines(spread, rule, echoes), List.of());
  }

  /** The days that are named, or as many as there are sessions. */
  private static Set<DayOfWeek> days(Set<DayOfWeek> named, WeekDraft week) {
    int count = week.sessions.or(named.size());
    if (named.isEmpty() && count > 0) {
      return spread(count);
    }
    if (named.isEmpty() && week.faults.faults().isEmpty()) {
      week.faults.fault(
          new Span("", 1),
          "No day is named. Say which, such as \"Mon, Wed, Fri\", or how many, such as \"3"
              + " sessions\".");
    } else if (count != named.size()) {
      week.faults.fault(
          week.sessions.span(),
          "Here are "
              + named.size()
              + (named.size() == 1 ? " day (" : " days (")
              + named.stream().map(DayNames::of).collect(Collectors.joining(", "))
              + "), not "
              + count
              + ". Name each day once, one a session, or leave out the number.");
    }
    return named;
  }

  /**
   * Days as evenly apart as seven allow, from Monday on: session k of n, counted from 0, is 7k/n
   * days after it, rounded down.
   */
  static Set<DayOfWeek> spread(int count) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (int k = 0; k < count; k++) {
      days.add(DayOfWeek.of(1 + 7 * k / count));
    }
    return days;
  }

  private AskReading read(Words words, WeekParts parts, DayOfWeek day, int all) {
    Set<Integer> own = new HashSet<>();
    Set<Integer> held = new HashSet<>();
    StringBuilder title = new StringBuilder(DayNames.of(day));
    for (WeekParts.Part part : parts.parts()) {
      for (int at = part.from(); at < part.to() && part.holds(day, all); at++) {
        held.add(at);
        if (!part.isShared(all)) {
          own.add(at);
        }
      }
      if (!part.isShared(all) && part.holds(day, all)) {
        title.append(title.indexOf(":") < 0 ? ": " : ", ");
        title.append(Assembly.title(words.span(part.from(), part.to()).text()));
      }
    }
    held.removeIf(parts::isTaken);
    overrule(words, held, own);
    return reader.read(only(words, held), new AskDraft(), title.toString());
  }

  /** Drops what is said for all days where this one says otherwise. */
  private void overrule(Words words, Set<Integer> held, Set<Integer> own) {
    Map<Integer, Phrase> phrases = reader.phrases(only(words, held));
    AskDraft said = new AskDraft();
    phrases.forEach(
        (at, phrase) ->
            phrase.effect().filter(e -> own.contains(at)).ifPresent(e -> e.accept(said)));
    Set<String> topics = Topics.of(said);
    phrases.forEach(
        (at, phrase) -> {
          AskDraft draft = new AskDraft();
          phrase.effect().ifPresent(effect -> effect.accept(draft));
          if (!own.contains(at) && Topics.only(draft).filter(topics::containsAll).isPresent()) {
            for (int i = at; i < phrase.end(); i++) {
              held.remove(i);
            }
          }
        });
  }

  /** The words at some places; whatever is between them separates, as it did in the ask. */
  private static Words only(Words words, Set<Integer> places) {
    List<Token> tokens = new ArrayList<>();
    for (int at = 0; at < words.size(); at++) {
      Token token = words.at(at);
      tokens.add(
          places.contains(at) || words.isBreak(at)
              ? token
              : new Token(Token.Kind.BREAK, "", "", token.start(), token.end()));
    }
    return words.with(tokens);
  }
}
