// One verdict of the guard against the bare formulas behind it; a sheet of 200 specifications against 200
// bare verdicts; the library as it is loaded at start against reading the same bytes as plain CSV.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <vector>

#include "core/base/csv.h"
#include "core/base/resource.h"
#include "core/fastener/tables.h"
#include "core/joint/utilisation.h"
#include "core/procedure/guard_subject.h"

namespace {

using namespace cw;

/// The median of several runs, in microseconds.
template <class Work>
double microseconds(Work work) {
  std::vector<double> runs;
  for (int run = 0; run < 9; ++run) {
    const auto start = std::chrono::steady_clock::now();
    work();
    runs.push_back(
        std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
  }
  std::nth_element(runs.begin(), runs.begin() + 4, runs.end());
  return runs[4];
}

constexpr const char* kThreads[] = {"M6", "M8", "M10", "M12", "M16", "M20", "M24", "M8x1"};
constexpr const char* kConditions[] = {"dry", "oiled", "moly paste", ""};

GuardSubject subject(std::size_t i) {
  GuardSubject out;
  out.thread = shippedCatalogue().thread(kThreads[i % std::size(kThreads)]).value();
  out.grade = shippedCatalogue().grade("8.8", out.thread).value();
  const std::string condition = kConditions[i % std::size(kConditions)];
  if (!condition.empty()) out.condition = shippedCatalogue().condition(condition).value();
  return out;
}

StatedTorque torque(std::size_t i) {
  return {std::to_string(5 + i), i % 3 == 0 ? &kPoundFoot : &kNewtonMetre};
}

/// What a verdict cannot do without: the arms and the yield loads at the typical and the highest friction.
double bareFormulas(const GuardSubject& at) {
  const ResistanceRange range = *resistanceOf(at);
  double sum = 0;
  for (const Resistance& resistance : {range.typical, range.high})
    sum += (at.grade->yield * at.thread.stressArea / twistFactor(at.thread, resistance.friction.thread) *
            resistance.arm)
               .si();
  return sum;
}

void measureVerdict() {
  constexpr std::size_t kTimes = 2000;
  std::vector<GuardSubject> subjects;
  for (std::size_t i = 0; i < 32; ++i) subjects.push_back(subject(i));
  std::size_t inBand = 0;
  double sum = 0;
  const double verdict = microseconds([&] {
    for (std::size_t i = 0; i < kTimes; ++i)
      inBand += judge(torque(i % 90), subjects[i % 32])->verdict == Verdict::InBand;
  });
  const double bare = microseconds([&] {
    for (std::size_t i = 0; i < kTimes; ++i) sum += bareFormulas(subjects[i % 32]);
  });
  fmt::print(
      "one guard verdict: {:.2f} µs; the bare formulas behind it {:.2f} µs ({:.1f} times; {} in band, "
      "{:.0f})\n",
      verdict / kTimes, bare / kTimes, verdict / bare, inBand, sum);
}

/// Two hundred specifications, each on a fastener of its own, named as a sheet names them.
void measureSheet() {
  std::vector<Fastener> fasteners;
  std::vector<Specification> specifications;
  std::vector<GuardSubject> ready;
  for (std::size_t i = 0; i < 200; ++i) {
    Fastener fastener;
    fastener.thread = kThreads[i % std::size(kThreads)];
    fastener.grade = "8.8";
    fasteners.push_back(fastener);
    Specification specification;
    specification.condition = kConditions[i % std::size(kConditions)];
    specification.aim = torque(i % 90);
    specifications.push_back(specification);
    ready.push_back(subject(i));
  }
  std::size_t inBand = 0;
  const double sheet = microseconds([&] {
    for (std::size_t i = 0; i < 200; ++i)
      inBand +=
          judge(*specifications[i].aim, *guardSubject(fasteners[i], specifications[i], shippedCatalogue()))
              ->verdict == Verdict::InBand;
  });
  const double bare = microseconds([&] {
    for (std::size_t i = 0; i < 200; ++i)
      inBand += judge(*specifications[i].aim, ready[i])->verdict == Verdict::InBand;
  });
  fmt::print(
      "a sheet of 200 specifications: {:.2f} ms; 200 bare verdicts {:.2f} ms ({:.1f} times; {} in band)\n",
      sheet / 1e3, bare / 1e3, sheet / bare, inBand);
}

void measureLoad() {
  std::size_t rows = 0;
  const double load = microseconds([&] {
    Library library;
    for (const std::string_view path : resourcesBelow("library/")) addTable(library, resource(path));
    rows += Catalogue::make(std::move(library))->rows().threads.size();
  });
  const double plain = microseconds([&] {
    for (const std::string_view path : resourcesBelow("library/"))
      rows += parseCsv(resource(path))->rows.size();
  });
  fmt::print("the library at start: {:.2f} ms; its files as plain CSV {:.2f} ms ({:.1f} times; {} rows)\n",
             load / 1e3, plain / 1e3, load / plain, rows);
}

}  // namespace

int main() {
  measureVerdict();
  measureSheet();
  measureLoad();
}
