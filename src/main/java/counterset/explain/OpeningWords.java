package counterset.explain;

import counterset.model.English;
import counterset.model.EquipmentKind;
import counterset.model.Fetch;
import counterset.model.Intervals;
import counterset.model.Item;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;

/** The first words of a session: what is on or within reach, and how the session runs. */
final class OpeningWords {

  private OpeningWords() {}

  static List<String> of(Plan plan) {
    List<String> sentences = new ArrayList<>();
    sentences.add("Get ready.");
    equipment(plan, sentences);
    if (plan.totals().supersets() > 0) {
      sentences.add(English.capital(how(plan)) + ".");
    }
    return sentences;
  }

  private static void equipment(Plan plan, List<String> sentences) {
    ItemWords words = new ItemWords(plan.problem());
    List<Item> atStart = plan.fetch().stream().filter(Fetch::atStart).map(Fetch::item).toList();
    List<Item> worn = atStart.stream().filter(OpeningWords::isWorn).toList();
    List<Item> near =
        atStart.stream().filter(item -> !isWorn(item) && !item.equipment().alwaysThere()).toList();
    if (!worn.isEmpty()) {
      sentences.add(English.capital(words.said(worn)) + " on.");
    }
    if (!near.isEmpty()) {
      sentences.add(English.capital(words.said(near)) + " within reach.");
    }
    if (worn.isEmpty() && near.isEmpty()) {
      sentences.add("Nothing in your hands yet.");
    }
  }

  private static boolean isWorn(Item item) {
    return item.equipment().kind() == EquipmentKind.WORN;
  }

  private static String how(Plan plan) {
    Intervals clock = plan.problem().clock();
    int blocks = plan.totals().supersets();
    String rest =
        clock.rest() == 0 ? ", without rest" : ", then " + clock.rest() + " seconds of rest";
    String rounds =
        clock.rounds() > 1 ? ", each of them " + English.number(clock.rounds()) + " times" : "";
    if (clock.perSuperset() == 1) {
      return English.count(blocks, "exercise")
          + rounds
          + ": "
          + clock.work()
          + " seconds of work"
          + rest;
    }
    String between =
        clock.between() == 0 ? " back to back" : " with " + clock.between() + " seconds to switch";
    return English.count(blocks, BlockWords.name(plan))
        + rounds
        + ": "
        + English.number(clock.perSuperset())
        + " exercises"
        + between
        + ", "
        + clock.work()
        + " seconds each"
        + rest;
  }
}
