#include "core/report/figures.h"

namespace cw {
namespace {

const char* failureWords(Failure failure) {
  switch (failure) {
    case Failure::BoltBreaks:
      return "The bolt breaks before any thread strips, at";
    case Failure::BoltThreadStrips:
      return "The bolt's thread strips first, at";
    case Failure::TappedThreadStrips:
      break;
  }
  return "The tapped thread strips first, at";
}

const LengthUnit& lengthUnitBeside(const Thread& thread) {
  return thread.system == ThreadSystem::Metric ? kMillimetre : kInch;
}

BandDrawing strengthBand(const Stripping& found) {
  BandOf<ForceTag> band{Force::si(0), found.load};
  band.values.emplace_back("bolt breaks %1", found.boltBreaks);
  band.values.emplace_back("bolt's thread strips %1", found.boltStrips);
  band.values.emplace_back("tapped thread strips %1", found.tappedStrips);
  return bandDrawing(band, kKilonewton);
}

}  // namespace

Result<Outcome> strippingOf(const Thread& thread, const Grade& grade, const TappedHole& hole) {
  CW_TRY(found, stripping(thread, grade, hole));
  const LengthUnit& unit = lengthUnitBeside(thread);
  FigureAnswer answer;
  answer.lead = failureWords(found.value.failure);
  answer.number = text(found.value.load, kKilonewton, 4);
  answer.derived = {text(found.value.load, kPoundForce, 4)};
  answer.sentences.push_back({"Engaged: %1. From %2 on, the bolt breaks before a thread strips.",
                              {text(hole.engagement, unit), text(found.value.neededEngagement, unit)}});
  answer.band = strengthBand(found.value);
  if (found.value.failure != Failure::BoltBreaks)
    answer.cautions.push_back(
        "A stripped thread shows late: torque for this fastener is limited by the thread, not by the bolt.");
  for (Message caution : found.working.cautions) answer.cautions.push_back(std::move(caution));
  return Outcome{{std::move(answer)}, std::move(found.working)};
}

}  // namespace cw
