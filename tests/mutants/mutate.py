#!/usr/bin/env python3
"""How much do the tests notice? Draws changes of the core's sources, builds them all at once, each behind a number,
and runs the tests once for each number. What no test notices is told with its place.

    python3 tests/mutants/mutate.py --scratch /tmp/mutants --count 300 --seed 1
    python3 tests/mutants/mutate.py --scratch /tmp/mutants --resume

Works in a copy of the tree in the scratch folder; the tree itself is only read.
"""
import argparse
import json
import os
import random
import re
import subprocess
import sys
import time
from pathlib import Path

sys.dont_write_bytecode = True
from sites import sites_of, switched  # noqa: E402

ROOT = Path(__file__).resolve().parents[2]
FOLDERS = ["core/record", "core/procedure", "core/store"]
PROGRAMS = ["rules_walk_tests", "core_record_tests", "core_procedure_tests", "core_report_tests", "store_tests"]
SWITCH = """#pragma once
#include <cstdio>
#include <cstdlib>
struct CwMutants {
  static constexpr int kMost = 100000;
  int now = 0;
  bool reached[kMost] = {};
  CwMutants() { if (const char* said = std::getenv("CW_MUTANT")) now = std::atoi(said); }
  ~CwMutants() {
    const char* path = std::getenv("CW_MUTANTS_REACHED");
    std::FILE* out = path != nullptr ? std::fopen(path, "a") : nullptr;
    if (out == nullptr) return;
    for (int i = 0; i < kMost; ++i) if (reached[i]) std::fprintf(out, "%d\\n", i);
    std::fclose(out);
  }
};
inline CwMutants& cw_mutants() { static CwMutants all; return all; }
inline bool cw_mutant(int number) {
  CwMutants& all = cw_mutants();
  all.reached[number] = true;
  return all.now == number;
}
"""


def arguments():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--scratch", type=Path, required=True, help="folder outside the tree; kept for --resume")
    parser.add_argument("--count", type=int, default=300, help="mutants drawn")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--folders", nargs="+", default=FOLDERS, help="of sources that are changed")
    parser.add_argument("--programs", nargs="+", default=PROGRAMS, help="test programs, the quickest first")
    parser.add_argument("--steps", type=int, default=3000, help="entries that the walk over the rules tries")
    parser.add_argument("--jobs", type=int, default=2, help="compilers side by side")
    parser.add_argument("--flags", default="-O0 -w", help="of the compiler")
    parser.add_argument("--report", type=Path, help="JSON; default: report.json in the scratch folder")
    parser.add_argument("--resume", action="store_true", help="go on with what was drawn and built before")
    return parser.parse_args()


def copied_tree(scratch):
    tree = scratch / "tree"
    tree.mkdir(parents=True, exist_ok=True)
    listed = subprocess.run(["git", "-C", str(ROOT), "ls-files", "-z"], check=True, capture_output=True).stdout
    for name in filter(None, listed.decode().split("\0")):
        if (ROOT / name).is_file():
            (tree / name).parent.mkdir(parents=True, exist_ok=True)
            (tree / name).write_bytes((ROOT / name).read_bytes())
    return tree


def draw(options):
    everything = []
    for folder in options.folders:
        for path in sorted((ROOT / folder).glob("*.cpp")):
            name = str(path.relative_to(ROOT))
            everything += [(name, site) for site in sites_of(path.read_text())]
    random.Random(options.seed).shuffle(everything)
    # More than are asked for: some do not compile.
    drawn = everything[:options.count + options.count // 2]
    for number, (_, site) in enumerate(drawn, 1):
        site.number = number
    print(f"{len(everything)} places and changes, {len(drawn)} drawn")
    return drawn


def write_sources(tree, drawn):
    """Those that could be written: ranges that cross one another exclude each other."""
    written = set()
    for name in sorted({name for name, _ in drawn}):
        source = (ROOT / name).read_text()
        text, kept = switched(source, [site for own, site in drawn if own == name])
        written |= {site.number for site in kept}
        text = f'#include "cw_mutant.h"\n#line 1 "{tree / name}"\n{text}'
        if (tree / name).read_text() != text:
            (tree / name).write_text(text)
    return [(name, site) for name, site in drawn if site.number in written]


def build(tree, options):
    folder = tree / "build"
    if not (folder / "build.ninja").exists():
        subprocess.run(["cmake", "-C", "cmake/dev-debug.cmake", "-DCMAKE_CXX_COMPILER=clang++", "-DCMAKE_UNITY_BUILD=ON", "-DCMAKE_UNITY_BUILD_BATCH_SIZE=5",
                        f"-DCMAKE_CXX_FLAGS=-ferror-limit=0 -I{tree}", f"-DCMAKE_CXX_FLAGS_DEBUG={options.flags}",
                        "-S", ".", "-B", "build", "-G", "Ninja"], cwd=tree, check=True, stdout=subprocess.DEVNULL)
    return subprocess.run(["ninja", "-C", "build", f"-j{options.jobs}", "-k", "0", *options.programs], cwd=tree,
                          capture_output=True, text=True, errors="replace")


def built(tree, drawn, options):
    """Builds, leaving out what does not compile, until all does."""
    for attempt in range(12):
        drawn = write_sources(tree, drawn)
        result = build(tree, options)
        if result.returncode == 0:
            return drawn
        wrong = {(str(Path(file).resolve()), int(line)) for file, line in
                 re.findall(r"^(\S+?):(\d+):\d+: (?:fatal )?error", result.stdout, re.M)}
        lines = {}
        for name, site in drawn:
            text = (ROOT / name).read_text()
            first, last = text.count("\n", 0, site.start) + 1, text.count("\n", 0, site.end) + 1
            lines[site.number] = {(str((tree / name).resolve()), line) for line in range(first, last + 1)}
        bad = {number for number, places in lines.items() if places & wrong}
        if not bad:
            sys.exit(result.stdout[-4000:] + "\nthis does not build, and no mutant is to blame")
        print(f"{len(bad)} do not compile and are left out")
        drawn = [(name, site) for name, site in drawn if site.number not in bad]
    sys.exit("the mutants do not build")


def run(tree, program, options, number, timeout, reached=None, words=()):
    environment = dict(os.environ, CW_MUTANT=str(number), CW_RULES_WALK_STEPS=str(options.steps), GTEST_FAIL_FAST="1",
                       QT_QPA_PLATFORM="offscreen", LC_ALL="C.UTF-8", TZ="UTC")
    if reached is not None:
        environment["CW_MUTANTS_REACHED"] = str(reached)
        environment.pop("GTEST_FAIL_FAST")
    try:
        return subprocess.run([str(tree / "build/bin" / program), *words], cwd=tree, env=environment, timeout=timeout,
                              capture_output=True, text=True, errors="replace")
    except subprocess.TimeoutExpired:
        return None


def baseline(tree, options):
    """What each program takes, which mutants it comes by, and which of its tests fail without any."""
    out = {}
    for program in options.programs:
        marks = tree.parent / f"{program}.reached"
        marks.unlink(missing_ok=True)
        begun = time.monotonic()
        result = run(tree, program, options, 0, 3600, marks)
        seconds = time.monotonic() - begun
        failing = sorted(set(re.findall(r"^\[  FAILED  \] (\S+?)(?:,| \(|$)", result.stdout, re.M)))
        failing = [name for name in failing if "." in name]
        reached = sorted({int(line) for line in marks.read_text().split()}) if marks.exists() else []
        words = [f"--gtest_filter=-{':'.join(failing)}"] if failing else []
        if failing:
            print(f"{program}: {len(failing)} tests fail without any mutant and are left out")
        if result.returncode != 0 and not failing:
            sys.exit(f"{program} ends with {result.returncode} without any mutant:\n{result.stdout[-2000:]}{result.stderr[-2000:]}")
        print(f"{program}: {seconds:.1f} s, comes by {len(reached)} mutants")
        out[program] = {"seconds": seconds, "reached": reached, "words": words}
    return out


def prepared(options):
    """[number, file, line, what, before] of each mutant, built; and the baseline."""
    kept = options.scratch / "mutants.json"
    tree = options.scratch / "tree"
    if options.resume:
        state = json.loads(kept.read_text())
        options.seed = state["seed"]
        return tree, state["mutants"], state["baseline"]
    tree = copied_tree(options.scratch.resolve())
    (tree / "cw_mutant.h").write_text(SWITCH)
    drawn = built(tree, draw(options), options)[:options.count]
    mutants = []
    for name, site in drawn:
        text = (ROOT / name).read_text()
        mutants.append({"number": site.number, "file": name, "line": text.count("\n", 0, site.start) + 1, "what": site.what,
                        "before": " ".join(text[site.start:site.end].split())[:160]})
    base = baseline(tree, options)
    kept.write_text(json.dumps({"seed": options.seed, "mutants": mutants, "baseline": base}, indent=1))
    return tree, mutants, base


def judged(tree, mutant, base, options):
    """The program that noticed, and how; or nothing."""
    reached = False
    for program in options.programs:
        if mutant["number"] not in base[program]["reached"]:
            continue
        reached = True
        result = run(tree, program, options, mutant["number"], 20 + 4 * base[program]["seconds"], None, base[program]["words"])
        if result is None:
            return {"caught": True, "by": program, "how": "took too long"}
        if result.returncode != 0:
            failed = re.search(r"^\[  FAILED  \] (\S+)", result.stdout, re.M)
            return {"caught": True, "by": program, "how": failed.group(1) if failed else f"ended with {result.returncode}"}
    return {"caught": False, "how": "survived" if reached else "no test comes by"}


def main():
    options = arguments()
    if ROOT in options.scratch.resolve().parents or ROOT == options.scratch.resolve():
        sys.exit("the scratch folder lies in the tree; name one outside")
    tree, mutants, base = prepared(options)
    report = options.report or options.scratch / "report.json"
    known = {}
    if options.resume and report.exists():
        known = {each["number"]: each for each in json.loads(report.read_text())["mutants"]}
    for at, mutant in enumerate(mutants, 1):
        if mutant["number"] not in known:
            known[mutant["number"]] = dict(mutant, **judged(tree, mutant, base, options))
        done = known[mutant["number"]]
        mark = "caught  " if done["caught"] else "SURVIVED"
        print(f"{at}/{len(mutants)} {mark} {done['file']}:{done['line']}: {done['what']}: {done['before']}"
              f" ({done.get('by', '')} {done['how']})", flush=True)
        all_done = [known[each["number"]] for each in mutants if each["number"] in known]
        caught = sum(each["caught"] for each in all_done)
        report.write_text(json.dumps({"seed": options.seed, "judged": len(all_done), "caught": caught, "mutants": all_done},
                                     indent=1))
    survivors = [each for each in known.values() if not each["caught"]]
    print(f"{len(known) - len(survivors)} of {len(known)} caught; survivors:")
    for each in sorted(survivors, key=lambda e: (e["file"], e["line"])):
        print(f"  {each['file']}:{each['line']}: {each['what']}: {each['before']} ({each['how']})")


if __name__ == "__main__":
    main()
