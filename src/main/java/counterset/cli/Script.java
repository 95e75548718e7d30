package counterset.cli;

/** The script that starts the program without a Java machine in between; see {@link Relaunch}. */
final class Script {

  private Script() {}

  /** For a POSIX shell; the jar and the archive of its classes are looked for beside the script. */
  static String text() {
    return """
        #!/bin/sh
        # Starts Counterset. Written by the build, beside counterset.jar.
        self=$0
        if [ -L "$self" ]; then
          self=$(readlink -f "$self")
        fi
        folder=${self%/*}
        java=java
        if [ -x "${JAVA_HOME:-}/bin/java" ]; then
          java=$JAVA_HOME/bin/java
        fi
        compiler=SHORT
        case " $* " in
          LONG) compiler= ;;
        esac
        exec "$java" $compiler SETTINGS \\
          -XX:SharedArchiveFile="$folder/counterset.jsa" \\
          -cp "$folder/counterset.jar" MAIN "$@"
        """
        .replace("SHORT", Relaunch.SHORT)
        .replace("LONG", "*" + String.join("* | *", Relaunch.LONG) + "*")
        .replace("SETTINGS", String.join(" ", Relaunch.SETTINGS))
        .replace("MAIN", Main.class.getName());
  }
}
