package counterset.report.md;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.report.Golden;
import counterset.report.Hostile;
import counterset.report.Plans;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;

/** Notes, read by the reference implementation of CommonMark for Java. */
class NotesTest {

  private static final List<TablesExtension> TABLES =
      List.of((TablesExtension) TablesExtension.create());

  @Test
  void looksAsAgreed() {
    Map<String, String> files = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> files.put(name, Notes.of(plan, Plans.CATALOGUE)));
    Golden.check("notes", ".md", files);
  }

  @Test
  void hasAHeadingForEachSupersetAndARowForEachInterval() {
    Plan plan = Plans.legs();
    Seen seen = seen(Notes.of(plan, Plans.CATALOGUE));

    assertThat(seen.headings).isEqualTo(1 + 3 + plan.session().supersets().size());
    assertThat(seen.rows).isEqualTo(1 + plan.timeline().size());
  }

  @Test
  void whateverTheCatalogueSaysIsText() {
    Plan plan = Hostile.plan();
    String notes = Notes.of(plan, Hostile.catalogue());
    Seen seen = seen(notes);

    assertThat(seen.markup).isEmpty();
    assertThat(seen.headings).isEqualTo(1 + 3 + plan.session().supersets().size());
    assertThat(seen.rows).isEqualTo(1 + plan.timeline().size());
    String text = TextContentRenderer.builder().extensions(TABLES).build().render(parse(notes));
    plan.session()
        .work()
        .map(Exercise::name)
        .forEach(name -> assertThat(text).contains(name.strip()));
  }

  private static Node parse(String notes) {
    return Parser.builder().extensions(TABLES).build().parse(notes);
  }

  private static Seen seen(String notes) {
    Seen seen = new Seen();
    parse(notes).accept(seen);
    return seen;
  }

  private static final class Seen extends AbstractVisitor {

    private int headings;
    private int rows;
    private final List<Node> markup = new ArrayList<>();

    @Override
    public void visit(Heading heading) {
      headings++;
      visitChildren(heading);
    }

    @Override
    public void visit(CustomNode node) {
      rows += node instanceof TableRow ? 1 : 0;
      visitChildren(node);
    }

    @Override
    public void visit(HtmlBlock html) {
      markup.add(html);
    }

    @Override
    public void visit(HtmlInline html) {
      markup.add(html);
    }

    @Override
    public void visit(Link link) {
      markup.add(link);
    }

    @Override
    public void visit(StrongEmphasis strong) {
      markup.add(strong);
    }
  }
}
