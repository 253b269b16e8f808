#include "tests/rules_walk/oracle.h"

#include <fmt/format.h>

#include "core/record/next.h"
#include "tests/rules_walk/torque_now.h"

namespace cw::test {

std::string Oracle::afterEntry(const Job& job) {
  if (job.entries.size() != m_entries.size() + 1) return "not one entry more";
  const std::string text = canonical(entryToJson(job.entries.back().entry));
  m_texts.push_back(text);
  m_entries.push_back(*parseJson(text));
  m_overtaken.push_back(false);
  std::string framed = "clampwright.entry.v1\n";
  framed.append(reinterpret_cast<const char*>(m_previous.data()), m_previous.size()).append(text);
  m_previous = sha256(framed);
  if (m_previous != job.head || m_previous != job.entries.back().hash) return "the chain is broken";
  if (const std::string wrong = people(job, m_entries.back()); !wrong.empty()) return wrong;
  if (const std::string wrong = leadsWord(job, m_entries.back()); !wrong.empty()) return wrong;
  if (const std::string wrong = pull(job, m_entries.back()); !wrong.empty()) return wrong;
  if (const std::string wrong = fates(job, m_entries.back()); !wrong.empty()) return wrong;
  const Next now = next(job);
  if (!(now == next(job))) return "next is not steady";
  if (now.stage < Stage::ReadWarnings || now.stage > Stage::CheckPass) return {};
  const StepProgress& progress = job.steps[now.step];
  if (progress.state != StepState::Open && progress.state != StepState::SetAside)
    return "next names a closed step";
  if (now.stage == Stage::TightenPosition && progress.tightening.tightened.contains(now.position))
    return "next names a position that is tightened";
  return {};
}

/// Each person named has a voucher and nobody else; who vouches by session has signed in since the last
/// pause.
std::string Oracle::people(const Job&, const Json& entry) {
  std::set<std::string> named{textOf(entry, "entered_by")}, vouched;
  if (const std::string sign = textOf(entry, "supervisor"); !sign.empty()) named.insert(sign);
  for (const Json& doer : *entry.find("by")->array()) named.insert(textOf(doer, "person"));
  for (const auto& [key, value] : *entry.find("body")->object())
    if (key.ends_with("allowed_by") && !value.string()->empty()) named.insert(*value.string());
  const std::string kind = textOf(entry, "kind");
  for (const Json& voucher : *entry.find("vouched")->array()) {
    const std::string sign = textOf(voucher, "person"), how = textOf(voucher, "how");
    vouched.insert(sign);
    if (how == "session" && !m_signedIn.contains(sign))
      return sign + " vouches by session and has not signed in";
    if (how == "phone" && sign == textOf(entry, "entered_by")) return "the author by phone";
  }
  if (named != vouched) return "people named and people who vouch are not the same";
  const bool own = kind == "tool-stopped" || kind == "clock-went-back";
  const Json* author = voucherOf(entry, textOf(entry, "entered_by"));
  if (!own && textOf(*author, "how") != "pin" && textOf(*author, "how") != "session")
    return "the author was not here";
  if (kind == "paused") m_signedIn.clear();
  if (own || kind == "paused") return {};
  for (const Json& voucher : *entry.find("vouched")->array())
    if (textOf(voucher, "how") == "pin") m_signedIn.insert(textOf(voucher, "person"));
  return {};
}

/// Whoever allowed something leads the shop, and was here where that is asked for.
std::string Oracle::leadsWord(const Job& job, const Json& entry) const {
  const std::string kind = textOf(entry, "kind");
  const Json& body = *entry.find("body");
  const bool torqueOnly = body.find("aim") != nullptr;
  const Step* step = job.sheet.step(textOf(body, "step"));
  std::string sign = textOf(body, "allowed_by");
  const bool asked = !sign.empty() || kind == "deviated" || kind == "repaired";
  if (!asked) return {};
  if (sign.empty() && job.start.alone) return {};
  if (sign.empty()) sign = textOf(entry, "entered_by");
  const Json* lead = voucherOf(entry, sign);
  bool leads = false;
  for (const Json& role : *lead->find("roles")->array()) leads = leads || *role.string() == "shop-lead";
  if (!leads || lead->find("apprentice") != nullptr) return sign + " allowed it and is no lead";
  const bool here = textOf(*lead, "how") == "pin" || textOf(*lead, "how") == "session";
  const bool isHold = step != nullptr && step->kind == StepKind::Hold;
  if ((kind == "left-blank" || (kind == "deviated" && !torqueOnly)) && isHold && !here)
    return "a hold was left out by somebody who was not here";
  if (kind == "tool-set" && step != nullptr && wholeOf(body, "pass") >= passesOf(job, *step) && !here)
    return "a refused wrench was allowed for the last pass by somebody who was not here";
  return {};
}

/// A pull names a wrench that is set, at what is set, and says truly whether that is what is allowed.
std::string Oracle::pull(const Job& job, const Json& entry) const {
  if (textOf(entry, "kind") != "tightened") return {};
  const Json& body = *entry.find("body");
  const int sequence = wholeOf(entry, "seq");
  const Step& step = *job.sheet.step(textOf(body, "step"));
  const Band band = bandAt(job, m_entries, step, textOf(body, "position"), sequence);
  for (const Json& doer : *entry.find("by")->array()) {
    const auto set = settingOf(job, m_entries, step.id, textOf(doer, "tool"), sequence);
    if (!set) return "a pull with a wrench that nobody has set";
    if (!band.holds(*set)) return fmt::format("a pull with a wrench set to {} N·m", *set);
  }
  const auto reached =
      body.find("reading") != nullptr
          ? newtonMetresOf(*body.find("reading"))
          : *settingOf(job, m_entries, step.id, textOf((*entry.find("by")->array())[0], "tool"), sequence);
  const bool within = body.find("within") != nullptr;
  if (within != band.holds(reached)) return fmt::format("{} N·m is said to be within: {}", reached, within);
  return {};
}

/// Entries lose their hold, or are corrected, only by an entry that says so; none comes back, none changes.
std::string Oracle::fates(const Job& job, const Json& entry) {
  const std::string kind = textOf(entry, "kind");
  const Json& body = *entry.find("body");
  if (kind == "corrected") m_corrected.insert_or_assign(wholeOf(body, "of"), *body.find("now"));
  static const std::set<std::string> kUndo{"corrected", "reopened", "resumed", "taken-apart"};
  for (std::size_t i = 0; i < job.entries.size(); ++i) {
    const Kept& kept = job.entries[i];
    const int sequence = static_cast<int>(i) + 1;
    if (kept.overtaken != m_overtaken[i]) {
      if (m_overtaken[i]) return fmt::format("entry {} holds again", sequence);
      const bool looks = textOf(m_entries[i], "kind") == "witnessed";
      if (!kUndo.contains(kind) && !looks) return fmt::format("{} overtook entry {}", kind, sequence);
      m_overtaken[i] = true;
    }
    if (kept.correctedBy.has_value() != m_corrected.contains(sequence) &&
        textOf(m_entries[i], "kind") != "corrected")
      return fmt::format("entry {} is corrected by nothing", sequence);
  }
  // All of what they say, now and then.
  if (job.count() % 32 != 0 && !job.ended()) return {};
  for (std::size_t i = 0; i < job.entries.size(); ++i) {
    if (!(bodyToJson(job.entries[i].body()) == bodyNow(static_cast<int>(i) + 1)))
      return fmt::format("entry {} says something else", i + 1);
    if (canonical(entryToJson(job.entries[i].entry)) != m_texts[i])
      return fmt::format("entry {} was altered", i + 1);
  }
  return {};
}

Json Oracle::bodyNow(int sequence) const {
  const auto found = m_corrected.find(sequence);
  return found == m_corrected.end() ? *entry(sequence).find("body") : found->second;
}

bool Oracle::holds(const Job& job, int sequence) const {
  return !job.kept(sequence).overtaken;
}

}  // namespace cw::test
