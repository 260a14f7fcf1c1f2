#!/usr/bin/env bash
# Times the formula search on this machine. Compile first: mvn -q -Pfast -pl planner-service -am test-compile
set -eu
cd "$(dirname "$0")/.."
classes=planner-service/target/classes:planner-service/target/test-classes:events-schema/target/classes
exec java -cp "$classes" stirtide.planner.formula.FormulaTiming
