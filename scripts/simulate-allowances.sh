#!/usr/bin/env bash
# Calibration and grams saved on 2,000 simulated salons (seeded). Compile first: mvn -q -Pfast -pl planner-service -am test-compile
set -eu
cd "$(dirname "$0")/.."
libraries=$(find "${MAVEN_REPOSITORY:-$HOME/.m2/repository}/org/apache/commons" \
  -name 'commons-statistics-distribution-*.jar' -o -name 'commons-numbers-*.jar' \
  -o -name 'commons-rng-*.jar' | tr '\n' ':')
classes=planner-service/target/classes:planner-service/target/test-classes:events-schema/target/classes
exec java -cp "$classes:$libraries" stirtide.planner.allowance.SimulatedSalons
