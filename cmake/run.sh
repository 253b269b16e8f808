#!/bin/sh
# Installs what is missing, builds the program and starts its main job: the window on the demo shop.
# Without a display it plays the demo job and says where its files are.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/cmake/packages.sh"

# shellcheck disable=SC2086
need $run_packages

release=$top/build-release
say "building (the first time takes some minutes)"
configure "$release" release.cmake
cmake --build "$release" --target clampwright || stop "the build failed; the messages above say where"

demo=${CLAMPWRIGHT_DEMO:-$top/build-demo}
program=$release/bin/clampwright
if [ ! -f "$demo/demo.shop" ]; then
  say "playing the demo job"
  "$program" demo --out "$demo" || stop "the demo job failed"
fi
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  say "opening the demo shop $demo/demo.shop"
  exec "$program" --shop "$demo/demo.shop"
fi
say "there is no display; the demo's sheet, record, tables and pictures are in $demo"
ls "$demo"
