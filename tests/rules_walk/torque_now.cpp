#include "tests/rules_walk/torque_now.h"

#include <cstdlib>
#include <stdexcept>

namespace cw::test {
namespace {

double newtonMetresIn(std::string_view code) {
  if (code == "N.m") return 1;
  if (code == "lbf.in") return 0.1129848290276167;
  if (code == "lbf.ft") return 1.3558179483314004;
  throw std::runtime_error("the walk does not know the unit " + std::string(code));
}

}  // namespace

std::string textOf(const Json& object, std::string_view key) {
  const Json* found = object.find(key);
  return found == nullptr || found->string() == nullptr ? std::string() : *found->string();
}

int wholeOf(const Json& object, std::string_view key) {
  const Json* found = object.find(key);
  return found == nullptr || found->number() == nullptr ? 0 : std::atoi(found->number()->text.c_str());
}

const Json* voucherOf(const Json& entry, const std::string& sign) {
  for (const Json& voucher : *entry.find("vouched")->array())
    if (textOf(voucher, "person") == sign) return &voucher;
  return nullptr;
}

double newtonMetres(const StatedTorque& torque) {
  return std::atof(torque.digits.c_str()) * newtonMetresIn(torque.unit->code);
}

double newtonMetresOf(const Json& stated) {
  return std::atof(textOf(stated, "value").c_str()) * newtonMetresIn(textOf(stated, "unit"));
}

Band bandAt(const Job& job, const std::vector<Json>& entries, const Step& step, const std::string& label,
            int before) {
  const Joint& joint = *job.sheet.joint(step.joint);
  const auto own = joint.positions.find(label);
  const std::string& id = own != joint.positions.end() && !own->second.specification.empty()
                              ? own->second.specification
                              : joint.specification;
  const Specification& said = *job.sheet.specification(id);
  Band out;
  out.low = said.low ? newtonMetres(*said.low) : 0;
  out.high = newtonMetres(said.high ? *said.high : *said.aim);
  for (const Json& entry : entries) {
    if (wholeOf(entry, "seq") >= before) break;
    const Json& body = *entry.find("body");
    const Json* aim = body.find("aim");
    if (textOf(entry, "kind") != "deviated" || textOf(body, "step") != step.id || aim == nullptr) continue;
    out.low = newtonMetresOf(body.find("low") != nullptr ? *body.find("low") : *aim);
    out.high = newtonMetresOf(body.find("high") != nullptr ? *body.find("high") : *aim);
  }
  return out;
}

std::optional<double> settingOf(const Job& job, const std::vector<Json>& entries, const std::string& step,
                                const std::string& tool, int before) {
  std::optional<double> out;
  for (const Json& entry : entries) {
    const int sequence = wholeOf(entry, "seq");
    if (sequence >= before) break;
    const Json& body = *entry.find("body");
    const bool isIt =
        textOf(entry, "kind") == "tool-set" && textOf(body, "step") == step && textOf(body, "tool") == tool;
    if (isIt && !job.kept(sequence).overtaken) out = newtonMetresOf(*body.find("setting"));
  }
  return out;
}

}  // namespace cw::test
