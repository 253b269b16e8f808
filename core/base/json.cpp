#include "core/base/json.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cw {
namespace {

void appendEscaped(std::string& out, std::string_view text) {
  out += '"';
  for (const char c : text) {
    switch (c) {
      case '"':
        out += "\\\"";
        break;
      case '\\':
        out += "\\\\";
        break;
      case '\b':
        out += "\\b";
        break;
      case '\f':
        out += "\\f";
        break;
      case '\n':
        out += "\\n";
        break;
      case '\r':
        out += "\\r";
        break;
      case '\t':
        out += "\\t";
        break;
      default:
        if (static_cast<unsigned char>(c) < 0x20)
          out += fmt::format("\\u{:04x}", c);
        else
          out += c;
    }
  }
  out += '"';
}

/// Writes with `indent` spaces a level, or on one line if `indent` is 0.
class Writer {
 public:
  explicit Writer(int indent) : m_indent(indent) {}

  void write(const Json& value) {
    if (value.isNull()) m_out += "null";
    if (const bool* b = value.boolean()) m_out += *b ? "true" : "false";
    if (const auto* s = value.string()) appendEscaped(m_out, *s);
    if (const auto* n = value.number()) m_out += n->text;
    if (const auto* a = value.array()) writeArray(*a);
    if (const auto* o = value.object()) writeObject(*o);
  }

  std::string take() { return std::move(m_out); }

 private:
  void writeArray(const Json::Array& array) {
    open('[');
    for (const Json& element : array) next(), write(element);
    close(']');
  }
  void writeObject(const Json::Object& object) {
    open('{');
    for (const auto& [key, member] : object) {
      next();
      appendEscaped(m_out, key);
      m_out += m_indent > 0 ? ": " : ":";
      write(member);
    }
    close('}');
  }
  void open(char bracket) { m_out += bracket, ++m_level, m_first = true; }
  void next() {
    if (!m_first) m_out += ',';
    m_first = false;
    newLine();
  }
  void close(char bracket) {
    --m_level;
    if (!m_first) newLine();
    m_first = false;
    m_out += bracket;
  }
  void newLine() {
    if (m_indent > 0) m_out += '\n' + std::string(static_cast<std::size_t>(m_indent * m_level), ' ');
  }

  std::string m_out;
  int m_indent;
  int m_level = 0;
  bool m_first = true;
};

}  // namespace

Json Json::decimal(double value) {
  return Json(Number{fmt::format("{}", value)});
}

const Json* Json::find(std::string_view key) const {
  const Object* members = object();
  if (members == nullptr) return nullptr;
  const auto found = members->find(key);
  return found == members->end() ? nullptr : &found->second;
}

Json& Json::set(std::string key, Json value) {
  if (object() == nullptr) m_value = Object{};
  object()->insert_or_assign(std::move(key), std::move(value));
  return *this;
}

std::string canonical(const Json& value) {
  Writer writer(0);
  writer.write(value);
  return writer.take();
}

std::string pretty(const Json& value) {
  Writer writer(2);
  writer.write(value);
  return writer.take() + "\n";
}

}  // namespace cw
