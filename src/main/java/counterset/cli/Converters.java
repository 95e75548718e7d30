package counterset.cli;

import counterset.search.Effort;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Option values from text; whatever is wrong is said in the coach's words. */
final class Converters {

  private Converters() {}

  /** Registers them with a command line and all commands that it has by now. */
  static void register(CommandLine line) {
    line.registerConverter(Effort.class, text -> constant(text, Effort.values()));
    line.registerConverter(Format.class, text -> constant(text, Format.values()));
    line.registerConverter(Long.class, whole(Long::valueOf));
    line.registerConverter(Integer.class, whole(Integer::valueOf));
  }

  private static <E extends Enum<E>> E constant(String text, E[] constants) {
    return Arrays.stream(constants)
        .filter(constant -> constant.name().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "("
                        + text
                        + ") must be one of "
                        + Arrays.stream(constants)
                            .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  private static <N extends Number> ITypeConverter<N> whole(Function<String, N> read) {
    return text -> {
      try {
        return read.apply(text);
      } catch (NumberFormatException e) {
        throw new TypeConversionException("(" + text + ") must be a whole number.");
      }
    };
  }
}
