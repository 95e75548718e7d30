package counterset.report.html;

/** Scripts of a page joined into one that leaves no names behind. */
final class Script {

  private Script() {}

  static String of(String... names) {
    return "(() => {\n\"use strict\";\n" + Resource.all(names) + "\n})();";
  }
}
