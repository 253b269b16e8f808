# Sourced by run.sh and check.sh: what the program and its tests need of Debian 12, and how it gets there.

run_packages="g++ cmake ninja-build ccache pkg-config qt6-base-dev libqt6sql6-sqlite libqt6svg6
  libfmt-dev libsodium-dev libexpected-dev nlohmann-json3-dev libcli11-dev libeigen3-dev libfontconfig-dev fonts-b612 libqpdf-dev"
check_packages="libgtest-dev libgmock-dev libsqlite3-dev poppler-utils qpdf units
  clang libclang-rt-14-dev python3 python3-cryptography python3-jsonschema util-linux"

say() { printf '\n== %s\n' "$*"; }
stop() { printf 'clampwright: %s\n' "$*" >&2; exit 1; }

# Installs those of the packages that are not there.
need() {
  missing=
  for package in "$@"; do
    state=$(dpkg-query -W -f '${Status}' "$package" 2>/dev/null) || state=
    [ "$state" = "install ok installed" ] || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  command -v apt-get >/dev/null || stop "this is not Debian; install by hand:$missing"
  as=
  if [ "$(id -u)" != 0 ]; then
    command -v sudo >/dev/null || stop "run as root or install sudo; missing are:$missing"
    as=sudo
  fi
  say "installing:$missing"
  $as apt-get update -qq || stop "the package list could not be fetched; check the network"
  # shellcheck disable=SC2086
  $as env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null ||
    stop "apt-get could not install:$missing"
}

# configure TREE CACHE [OPTION]: makes or refreshes a build tree.
configure() {
  tree=$1 cache=$2
  shift 2
  cmake -C "$top/cmake/$cache" "$@" -S "$top" -B "$tree" -G Ninja >"$tree.log" 2>&1 ||
    { tail -n 20 "$tree.log" >&2; stop "configuring failed; the whole log is $tree.log"; }
}
