package counterset.journal;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** What stands behind the last line break of a file. */
final class Tail {

  private static final int STEP = 8192;

  private Tail() {}

  /** The bytes; none if the file is empty or ends in a line break. */
  static byte[] read(FileChannel channel) throws IOException {
    long end = channel.size();
    long start = end;
    while (start > 0) {
      long from = Math.max(0, start - STEP);
      byte[] bytes = bytes(channel, from, Math.toIntExact(start - from));
      for (int i = bytes.length - 1; i >= 0; i--) {
        if (bytes[i] == '\n') {
          long begin = from + i + 1;
          return bytes(channel, begin, Math.toIntExact(end - begin));
        }
      }
      start = from;
    }
    return bytes(channel, 0, Math.toIntExact(end));
  }

  private static byte[] bytes(FileChannel channel, long from, int length) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(length);
    while (bytes.hasRemaining()) {
      if (channel.read(bytes, from + bytes.position()) < 0) {
        throw new EOFException("The file has become shorter while it was read.");
      }
    }
    return bytes.array();
  }
}
