# Shared by the scripts of this folder; not to be run by itself. The caller sets $here.
jar="$here/target/tui-client-0.1.0.jar"
classes="$jar:$here/target/lib/*"
archive="$here/target/bar.jsa"

start() {
    java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Xlog:disable -Xmx64m -Djava.awt.headless=true \
        $BAR_JAVA_OPTIONS "$@"
}

# An archive serves one place and one Java only; any other ignores it without a word.
made_for() { echo "$here $(readlink -f "$(command -v java)")"; }
