#include "core/procedure/applicability.h"

#include "core/procedure/model_fit.h"
#include "core/procedure/serials.h"

namespace cw {
namespace {

Applicability ofModel(const Sheet& sheet, const std::string& model) {
  if (auto other = forAnotherModel(sheet.model, model)) return {Applies::Unfit, {std::move(*other)}};
  if (!sheet.model.empty() && model.find_first_not_of(' ') == model.npos)
    return {Applies::NotJudged, {{"This sheet is for %1; the machine's model is not known.", {sheet.model}}}};
  return {};
}

Applicability ofSerial(const Sheet& sheet, const std::string& serial) {
  SerialVerdict verdict = serialFit(sheet, serial);
  if (verdict.fit == SerialFit::Fits) return {};
  return {verdict.fit == SerialFit::Outside ? Applies::Unfit : Applies::NotJudged,
          {std::move(verdict.reason)}};
}

}  // namespace

Applicability applicability(const Sheet& sheet, const std::string& model, const std::string& serial) {
  Applicability out = ofModel(sheet, model);
  const Applicability other = ofSerial(sheet, serial);
  out.doubts.insert(out.doubts.end(), other.doubts.begin(), other.doubts.end());
  if (out.verdict == Applies::Fits || other.verdict == Applies::Unfit) out.verdict = other.verdict;
  return out;
}

}  // namespace cw
