#!/bin/sh
# Installs what is missing, builds everything with address and undefined-behaviour sanitizers and runs
# every test; builds the program as it is used, kills it again and again, walks through its
# window and plays the demo with it. Warnings are errors, by clang, by g++ with optimisation and by g++ without.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/cmake/packages.sh"

# shellcheck disable=SC2086
need $run_packages $check_packages

export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC ASAN_OPTIONS=detect_leaks=1:strict_string_checks=1:malloc_context_size=12
export LSAN_OPTIONS=suppressions=$top/cmake/leaks.txt
sanitised=$top/build-check
say "building the tests, sanitised"
configure "$sanitised" dev-asan.cmake
cmake --build "$sanitised" || stop "the sanitised build failed; the messages above say where"

say "building the program as it is used, and the tests that need it so"
release=$top/build-release
configure "$release" release.cmake -DCW_BUILD_TESTS=ON
cmake --build "$release" --target clampwright kill_tests app_walk_tests ||
  stop "the release build failed; the messages above say where"

say "building as a contributor does"
debug=$top/build-debug
configure "$debug" dev-debug.cmake -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=10
cmake --build "$debug" --target core_record_tests || stop "the debug build failed; the messages above say where"

say "running the tests"
ctest --test-dir "$sanitised" --output-on-failure -j 2 || stop "tests failed; the messages above say which"

say "killing the program, and walking through its window"
ctest --test-dir "$release" --output-on-failure -j 3 -L as_used || stop "tests failed; the messages above say which"

say "playing the demo with the release program"
demo=$(mktemp -d)
trap 'rm -rf "$demo"' EXIT
"$release/bin/clampwright" demo --out "$demo/out" || stop "the demo job failed"
for file in record.json record.pdf; do
  "$release/bin/clampwright" record verify "$demo/out/$file" --key "$demo/out/key.json" ||
    stop "the demo's $file does not verify"
done
say "all is well"
