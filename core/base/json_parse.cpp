#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "core/base/json.h"
#include "core/base/utf8.h"

namespace cw {
namespace {

/// Builds a Json from nlohmann's parse events. Refuses by answering false, with the reason in `problem`.
class Builder final : public nlohmann::json_sax<nlohmann::json> {
 public:
  explicit Builder(const JsonLimits& limits) : m_limits(limits) {}

  bool null() override { return put(Json()); }
  bool boolean(bool value) override { return put(Json(value)); }
  bool number_integer(number_integer_t value) override {
    return put(Json(Json::Number{std::to_string(value)}));
  }
  bool number_unsigned(number_unsigned_t value) override {
    return put(Json(Json::Number{std::to_string(value)}));
  }
  bool number_float(number_float_t, const string_t& text) override { return put(Json(Json::Number{text})); }
  bool string(string_t& value) override { return put(Json(std::move(value))); }
  bool binary(binary_t&) override { return false; }
  bool start_array(std::size_t) override { return open(Json(Json::Array{})); }
  bool end_array() override { return close(); }
  bool start_object(std::size_t) override { return open(Json(Json::Object{})); }
  bool end_object() override { return close(); }

  bool key(string_t& name) override {
    if (m_open.back()->find(name) != nullptr)
      return refuse({"the key “%1” stands twice in one object", {shown(name)}}, "keep one of the two");
    m_keys.back() = std::move(name);
    return true;
  }

  bool parse_error(std::size_t at, const std::string&, const nlohmann::detail::exception&) override {
    position = at > 0 ? at - 1 : 0;
    return problem.empty() ? refuse("this is not valid JSON", "write it as DEVELOPERS.md shows") : false;
  }

  /// The keys down to where reading stopped: "joints.passes".
  std::string path() const {
    std::string out;
    for (const std::string& key : m_keys)
      if (!key.empty()) out += (out.empty() ? "" : ".") + shown(key);
    return shown(out);
  }

  Json root;
  Message problem, cure;
  std::optional<std::size_t> position;  ///< of the byte that is no JSON; the path says where else

 private:
  bool refuse(Message why, Message instead) {
    problem = std::move(why);
    cure = std::move(instead);
    return false;
  }
  /// One value more, unless there are too many.
  bool count() {
    if (++m_values <= m_limits.values) return true;
    return refuse({"there are more than %1 values", {std::to_string(m_limits.values)}}, "write fewer");
  }

  /// Puts a value where the next one belongs, and answers where it now stands.
  Json* place(Json value) {
    if (m_open.empty()) return &(root = std::move(value));
    Json& parent = *m_open.back();
    if (auto* array = parent.array()) return &array->emplace_back(std::move(value));
    return &((*parent.object())[m_keys.back()] = std::move(value));
  }
  bool put(Json value) {
    if (!count()) return false;
    place(std::move(value));
    return true;
  }
  bool open(Json value) {
    if (m_open.size() >= m_limits.depth)
      return refuse({"it is nested deeper than %1 levels", {std::to_string(m_limits.depth)}},
                    "nest it less deeply");
    if (!count()) return false;
    m_open.push_back(place(std::move(value)));
    m_keys.emplace_back();
    return true;
  }
  bool close() {
    m_open.pop_back();
    m_keys.pop_back();
    return true;
  }

  JsonLimits m_limits;
  std::vector<Json*> m_open;
  std::vector<std::string> m_keys;
  std::size_t m_values = 0;
};

std::string lineAndColumn(std::string_view text, std::size_t position) {
  const std::string_view before = text.substr(0, std::min(position, text.size()));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const auto newLine = before.rfind('\n');
  const auto column = before.size() - (newLine == std::string_view::npos ? 0 : newLine + 1) + 1;
  return fmt::format("line {}, column {}", line, column);
}

std::size_t firstBadByte(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = utf8SequenceLength(text.substr(at));
    if (length == 0) break;
    at += length;
  }
  return at;
}

}  // namespace

Result<Json> parseJson(std::string_view text, const JsonLimits& limits) {
  if (text.size() > limits.bytes)
    return fail(ErrorCode::InvalidInput, "", std::to_string(text.size()),
                {"the file has %1 bytes", {std::to_string(text.size())}},
                {"a file of at most %1 bytes", {std::to_string(limits.bytes)}});
  if (const std::size_t bad = firstBadByte(text); bad < text.size())
    return fail(ErrorCode::InvalidInput, lineAndColumn(text, bad), text.substr(bad, 1),
                {"the byte %1 is not UTF-8", {shown(text.substr(bad, 1))}}, "save the file as UTF-8");
  Builder builder(limits);
  if (nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) return std::move(builder.root);
  return fail(ErrorCode::InvalidInput,
              builder.position ? lineAndColumn(text, *builder.position) : builder.path(), "", builder.problem,
              builder.cure);
}

}  // namespace cw
