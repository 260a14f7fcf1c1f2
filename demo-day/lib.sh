# Shared by the scripts of this folder; not to be run by itself.
. "$(dirname "${BASH_SOURCE[0]}")/../.bin/launch.sh"
program demo demo-day stirtide.demo.DemoMain -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.io.tmpdir=/tmp \
    --enable-native-access=ALL-UNNAMED -Dstirtide.demo.salon="$root/demo-day/salon"
# Starts everything a demo starts, except the terminal.
train() { java "${flags[@]}" "$@" -cp "$target/lib/*" "$main" run --start-and-stop; }
clean_up() { rm -rf "/tmp/stirtide-demo-$1-"*; }
