#include "core/pattern/order.h"

#include <CLI/CLI.hpp>
#include <charconv>
#include <memory>
#include <numeric>

#include "app/command_line/commands.h"
#include "core/base/near_name.h"
#include "core/pattern/explain.h"
#include "core/pattern/layout_json.h"
#include "core/pattern/loosening.h"
#include "core/pattern/passes.h"
#include "core/pattern/several_tools.h"
#include "core/pattern/share_text.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct OrderOptions {
  std::string circle, rows, line, layout, rule, order;
  std::string tools;
  bool loosen = false;
};

Result<std::size_t> readCount(const std::string& option, std::string_view typed) {
  std::size_t count = 0;
  const char* end = typed.data() + typed.size();
  const auto [stop, error] = std::from_chars(typed.data(), end, count);
  if (error == std::errc() && stop == end && count <= kMostPositions) return count;
  return fail(ErrorCode::InvalidInput, option, typed, {"“%1” is not a count", {shown(typed)}},
              {"write a whole number up to %1", {std::to_string(kMostPositions)}});
}

/// The order does not hang on the size, so a shape given by counts alone is drawn in round numbers.
constexpr Length kDrawnDiameter = metres(1);
constexpr Length kDrawnSpacing = millimetres(40);

Result<Layout> circleLayout(const std::string& typed) {
  CW_TRY(count, readCount("--circle", typed));
  return Layout{Circle{count, kDrawnDiameter}};
}

Result<Layout> rowsLayout(const std::string& typed) {
  const std::size_t times = typed.find_first_of("xX");
  if (times == std::string::npos)
    return fail(ErrorCode::InvalidInput, "--rows", typed, {"“%1” is not rows by columns", {shown(typed)}},
                "write it like 2x5");
  CW_TRY(rows, readCount("--rows", std::string_view(typed).substr(0, times)));
  CW_TRY(columns, readCount("--rows", std::string_view(typed).substr(times + 1)));
  return Layout{Rows{rows, columns, kDrawnSpacing, kDrawnSpacing}};
}

Result<Layout> lineLayout(const std::string& typed) {
  CW_TRY(count, readCount("--line", typed));
  return Layout{Line{count, kDrawnSpacing}};
}

Result<Layout> layoutFile(const std::string& path) {
  CW_TRY(bytes, readFile(path));
  auto layout = readLayoutFile(bytes);
  if (!layout) return fail(within(path, layout.error()));
  return layout;
}

Result<Layout> layoutOf(const OrderOptions& given) {
  if (!given.circle.empty()) return circleLayout(given.circle);
  if (!given.rows.empty()) return rowsLayout(given.rows);
  if (!given.line.empty()) return lineLayout(given.line);
  return layoutFile(given.layout);
}

std::vector<std::string> wordsOf(std::string text) {
  for (char& c : text)
    if (c == ',') c = ' ';
  std::istringstream in(text);
  return {std::istream_iterator<std::string>(in), {}};
}

/// An order written by hand, as labels. InvalidInput naming its first gap, repeat or stranger.
Result<Order> handOrder(const std::string& written, const std::vector<Position>& positions) {
  std::vector<std::string> labels;
  for (const Position& position : positions) labels.push_back(position.label);
  const std::vector<std::string> typed = wordsOf(written);
  for (const Finding& finding : reviewOrder(typed, labels))
    return fail(ErrorCode::InvalidInput, "--order", written, finding.problem, finding.cure);
  Order order{{}, {"written by hand", true, {}}};
  for (const std::string& label : typed)
    order.positions.push_back(
        static_cast<std::size_t>(std::find(labels.begin(), labels.end(), label) - labels.begin()) + 1);
  return order;
}

Json numbers(const std::vector<std::size_t>& values) {
  return Json::Array(values.begin(), values.end());
}

/// The usual passes; the check pass goes round.
Json passesJson(const Order& order, const Order& round) {
  Json::Array out;
  for (const Pass& pass : passesOf(PassPlan{}))
    out.push_back(Json()
                      .set("kind", wordOf(pass.kind))
                      .set("share", pass.share ? Json::decimal(*pass.share) : Json())
                      .set("circular", pass.isCircular)
                      .set("order", numbers((pass.isCircular ? round : order).positions)));
  return out;
}

Json roundsJson(const Order& order) {
  Json::Array out;
  for (const double share : LooseningPlan{}.shares)
    out.push_back(Json()
                      .set("kind", "loosening")
                      .set("share", Json::decimal(share))
                      .set("circular", false)
                      .set("order", numbers(order.positions)));
  return out;
}

std::string passesLine() {
  std::vector<std::string> shares;
  for (const double share : PassPlan{}.shares) shares.push_back(percent(share));
  return "passes  all by finger first, then " + listed(shares) +
         " of the torque in this order, then round and round until nothing moves";
}

std::string roundsLine() {
  std::vector<std::string> shares;
  for (const double share : LooseningPlan{}.shares) shares.push_back(percent(share));
  return "rounds  let off to " + listed(shares) + " of the clamp load in this order";
}

std::string sourceLine(const Provenance& provenance) {
  return "source: " + provenance.source + (provenance.seen ? "" : " (from memory, check your edition)");
}

std::string labelsLine(const std::vector<Position>& positions, const std::vector<std::size_t>& order) {
  std::string out = "order ";
  for (const std::size_t position : order) out += " " + positions[position - 1].label;
  return out;
}

Result<void> addTools(Reply& reply, const std::string& typed, const Layout& layout, const Order& order,
                      const std::vector<Position>& positions) {
  if (typed.empty()) return {};
  CW_TRY(tools, readCount("--tools", typed));
  CW_TRY(steps, shareAmongTools(layout, order, tools));
  Json::Array all;
  for (const ToolStep& step : steps) {
    Json::Array together;
    std::string line = "together";
    for (const auto& position : step) {
      together.push_back(position ? Json(*position) : Json());
      line += " " + (position ? positions[*position - 1].label : std::string("-"));
    }
    all.push_back(std::move(together));
    reply.lines.push_back(line);
  }
  reply.json.set("tool_steps", std::move(all));
  return {};
}

Result<Order> chosenOrder(const OrderOptions& given, const Layout& layout, OrderRule rule,
                          const std::vector<Position>& positions) {
  return given.order.empty() ? tighteningOrder(layout, rule) : handOrder(given.order, positions);
}

Result<Reply> orderReply(const OrderOptions& given) {
  CW_TRY(layout, layoutOf(given));
  CW_TRY(where, positions(layout));
  CW_TRY(rule, given.rule.empty() ? Result<OrderRule>(usualRule(layout)) : orderRule(given.rule));
  CW_TRY(tightening, chosenOrder(given, layout, rule, where));
  CW_TRY(round, tighteningOrder(layout, OrderRule::Circular));
  const Order order = given.loosen ? looseningOrder(tightening) : tightening;
  Reply reply;
  reply.json.set("order", numbers(order.positions));
  reply.json.set("rule", given.order.empty() ? name(rule) : "by-hand");
  reply.json.set("passes", given.loosen ? roundsJson(order) : passesJson(order, round));
  reply.json.set("source", order.provenance.source).set("seen", order.provenance.seen);
  Json::Array labels, words;
  for (const Position& position : where) labels.push_back(position.label);
  for (const Message& message : explainOrder(where, order.positions)) words.push_back(plain(message));
  reply.json.set("labels", std::move(labels)).set("words", std::move(words));
  reply.lines = {labelsLine(where, order.positions)};
  if (given.order.empty())
    reply.lines.push_back("rule    " + std::string(name(rule)) + ": " + plain(inWords(rule)));
  reply.lines.push_back(given.loosen ? roundsLine() : passesLine());
  CW_CHECK(addTools(reply, given.tools, layout, order, where));
  reply.lines.push_back(sourceLine(order.provenance));
  return reply;
}

std::string ruleNames() {
  std::vector<std::string> names;
  for (const OrderRule rule : kOrderRules) names.emplace_back(name(rule));
  return listed(names, "or");
}

}  // namespace

void addOrder(Commands& commands) {
  CLI::App* app =
      commands.program.add_subcommand("order", "In what order to tighten or loosen, and in what passes");
  auto given = std::make_shared<OrderOptions>();
  CLI::Option_group* shape = app->add_option_group("shape", "where the fasteners are: one of these");
  shape->add_option("--circle", given->circle, "So many, equally spaced on a circle");
  shape->add_option("--rows", given->rows, "Rows by columns, equally spaced: 2x5");
  shape->add_option("--line", given->line, "So many in a line");
  shape->add_option("--layout", given->layout, "A layout file");
  shape->require_option(1);
  CLI::Option* rule = app->add_option("--rule", given->rule, ruleNames());
  app->add_option("--order", given->order, "An order of your own, as labels: \"1 5 3 7\"")->excludes(rule);
  app->add_flag("--loosen", given->loosen, "Let go instead, in reverse");
  app->add_option("--tools", given->tools, "How many work at the same time, never crossing");
  commands.add(app, [given](const Options&, Terminal&) { return orderReply(*given); });
}

}  // namespace cw
