#include "core/report/pattern_document.h"

#include "core/pattern/explain.h"
#include "core/pattern/loosening.h"
#include "core/pattern/several_tools.h"
#include "core/pattern/share_text.h"

namespace cw {
namespace {

class PatternInWords {
 public:
  PatternInWords(const Pattern& pattern, const Wording& wording) : m_pattern(pattern), m_wording(wording) {}

  Document write() const {
    Document out;
    out.title = tr(m_pattern.loosens ? "Loosening order" : "Tightening order");
    const auto all = positions(m_pattern.layout);
    if (!all) return refused(std::move(out), all.error());
    const auto labels = orderLabels(m_pattern);
    if (!labels) return refused(std::move(out), labels.error());
    out.sections.push_back(order(*all, *labels));
    const auto order = orderOf(m_pattern);
    if (!order) return out;
    out.sections.push_back(m_pattern.tools > 1 ? shared(*all, *order) : walk(*all, *order));
    out.sections.push_back(m_pattern.loosens ? rounds() : passes());
    return out;
  }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }
  std::string said(const Message& problem, const Message& cure) const {
    return tr(problem) + (cure.empty() ? "" : "; " + tr(cure)) + ".";
  }

  Document refused(Document out, const Error& error) const {
    out.sections.push_back({"", {Paragraph{said(error.problem, error.expected), Tone::Caution}}, false});
    return out;
  }

  Section order(const std::vector<Position>& all, const std::vector<std::string>& labels) const {
    Section out;
    std::vector<std::string> known;
    for (const Position& position : all) known.push_back(position.label);
    std::string line;
    for (const std::string& label : labels) line += (line.empty() ? "" : "  ") + label;
    out.blocks.push_back(Paragraph{line, Tone::Lead});
    if (m_pattern.byHand.empty())
      out.blocks.push_back(
          Paragraph{tr(m_pattern.loosens ? Message("The rule in reverse: %1.", {tr(inWords(m_pattern.rule))})
                                         : Message("The rule: %1.", {tr(inWords(m_pattern.rule))}))});
    else
      out.blocks.push_back(Paragraph{tr("An order written by hand.")});
    if (!m_pattern.byHand.empty())
      for (const Finding& finding : reviewOrder(m_pattern.byHand, known))
        out.blocks.push_back(Paragraph{said(finding.problem, finding.cure), Tone::Caution});
    if (const auto found = tighteningOrder(m_pattern.layout, m_pattern.rule);
        found && m_pattern.byHand.empty())
      out.blocks.push_back(Paragraph{found->provenance.source, Tone::Quiet});
    return out;
  }

  /// From position to position, in the words of the walk.
  Section walk(const std::vector<Position>& all, const Order& order) const {
    Table table{{{tr("No."), 1, true}, {tr("Position"), 2, true}, {tr("How to get there"), 7}}, {}};
    const std::vector<Message> words = explainOrder(all, order.positions);
    for (std::size_t i = 0; i < words.size(); ++i)
      table.rows.push_back({{std::to_string(i + 1)}, {all[order.positions[i] - 1].label}, {tr(words[i])}});
    return {tr("The way round"), {std::move(table)}, false};
  }

  Section shared(const std::vector<Position>& all, const Order& order) const {
    Section out{tr("What each tool tightens at the same time"), {}, false};
    const auto steps = shareAmongTools(m_pattern.layout, order, m_pattern.tools);
    if (!steps) {
      out.blocks.push_back(Paragraph{said(steps.error().problem, steps.error().expected), Tone::Caution});
      return out;
    }
    Table table{{{tr("No."), 1, true}}, {}};
    for (std::size_t tool = 1; tool <= m_pattern.tools; ++tool)
      table.columns.push_back({tr({"Tool %1", {std::to_string(tool)}}), 2, true});
    for (const ToolStep& step : *steps) {
      std::vector<Cell> row{{std::to_string(table.rows.size() + 1)}};
      for (const auto& position : step) row.push_back({position ? all[*position - 1].label : tr("waits")});
      table.rows.push_back(std::move(row));
    }
    out.blocks.push_back(std::move(table));
    return out;
  }

  Section passes() const {
    Section out{tr("Passes"), {}, false};
    for (const Finding& finding : reviewPasses(m_pattern.passes))
      out.blocks.push_back(Paragraph{said(finding.problem, finding.cure), Tone::Caution});
    if (!out.blocks.empty()) return out;
    Table table{{{tr("Pass"), 1, true}, {tr("What is done"), 9}}, {}};
    for (const Pass& pass : passesOf(m_pattern.passes))
      table.rows.push_back({{std::to_string(table.rows.size() + 1)}, {tr(inWordsOf(pass))}});
    out.blocks.push_back(std::move(table));
    if (const auto& gaps = m_pattern.passes.gaps) {
      std::vector<std::string> passes;
      for (const std::size_t pass : gaps->afterPasses)
        passes.push_back(percent(m_pattern.passes.shares[pass - 1]));
      out.blocks.push_back(Paragraph{
          tr({"After the pass at %1 read the gap between the faces at %2 places, going round: widest less "
              "narrowest at most %3.",
              {listed(passes), std::to_string(gaps->places), text(gaps->mostDifference)}})});
    }
    out.blocks.push_back(Paragraph{sourceOfShares().source, Tone::Quiet});
    return out;
  }

  Message inWordsOf(const Pass& pass) const {
    const std::string share = pass.share ? percent(*pass.share) : "";
    switch (pass.kind) {
      case PassKind::ByHand:
        return "Run every fastener to the face by finger and count them.";
      case PassKind::Snug:
        return {"Snug, at most %1 of the torque, in this order.", {share}};
      case PassKind::Pattern:
        return pass.isByPosition ? Message("%1 of the torque in this order, each position recorded.", {share})
                                 : Message("%1 of the torque in this order.", {share});
      case PassKind::Check:
        return {"Go round at %1 until nothing moves, at most %2 rounds.",
                {share, std::to_string(m_pattern.passes.check->limit)}};
      case PassKind::Retorque:
        return {"After %1 h go round once more at %2.",
                {significant(m_pattern.passes.retorque->wait.si() / 3600, 3), share}};
    }
    return {};
  }

  Section rounds() const {
    Section out{tr("Rounds"), {}, false};
    Table table{{{tr("Round"), 1, true}, {tr("What is done"), 9}}, {}};
    for (const double share : LooseningPlan{}.shares)
      table.rows.push_back(
          {{std::to_string(table.rows.size() + 1)},
           {share > 0 ? tr({"Let off to %1 of the clamp load in this order.", {percent(share)}})
                      : tr("Take out in this order.")}});
    out.blocks.push_back(std::move(table));
    out.blocks.push_back(Paragraph{sourceOfLooseningShares().source, Tone::Quiet});
    return out;
  }

  const Pattern& m_pattern;
  const Wording& m_wording;
};

}  // namespace

Document patternDocument(const Pattern& pattern, const Wording& wording) {
  return PatternInWords(pattern, wording).write();
}

}  // namespace cw
