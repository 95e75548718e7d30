package counterset.journal;

import java.util.List;

/**
 * The energy cost of one part of a session.
 *
 * @param part {@code warm-up}, {@code supersets} or {@code cool-down}
 * @param seconds how long it took; that of the supersets includes their rests
 * @param met its mean metabolic equivalents, to two decimals
 * @param codes the Compendium's activity codes behind it with their edition, such as {@code 02052
 *     (2024)}
 */
public record EnergyBlock(String part, int seconds, double met, List<String> codes) {

  public EnergyBlock {
    codes = List.copyOf(codes);
  }
}
