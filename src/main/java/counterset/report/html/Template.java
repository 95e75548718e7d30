package counterset.report.html;

import com.samskivert.mustache.Mustache;
import java.io.StringReader;

/**
 * Fills the templates of this package ({@code NAME.mustache}).
 *
 * <p>Whatever is put in is escaped for text and for quoted attributes; three braces, which switch
 * that off, are for text that is markup already. A name that a view does not have is an error.
 */
final class Template {

  private static final Mustache.Compiler COMPILER =
      Mustache.compiler()
          .escapeHTML(true)
          .strictSections(true)
          .emptyStringIsFalse(true)
          .withLoader(name -> new StringReader(source(name)));

  private Template() {}

  /**
   * A template with its gaps filled.
   *
   * @param view whose methods without arguments, such as the accessors of a record, give the values
   */
  static String fill(String name, Object view) {
    return COMPILER.compile(source(name)).execute(view);
  }

  private static String source(String name) {
    return Resource.text(name + ".mustache");
  }
}
