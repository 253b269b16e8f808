#include "app/command_line/job_enter.h"

#include <fmt/format.h>

#include <fstream>
#include <istream>
#include <optional>
#include <ostream>
#include <vector>

#include "app/command_line/open_shop.h"
#include "core/record/draft.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr std::size_t kLongestLine = 1 << 20;

Result<Receipt> enterLine(Shop& shop, const Id& job, std::string_view text, int number) {
  CW_TRY(line, readDraftLine(text, number, job));
  const std::string place = fmt::format("line {}", number);
  auto receipt = shop.ledger().append(job, line.draft, line.pins);
  return receipt ? receipt : fail(within(place, receipt.error()));
}

bool isBlank(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r");
  return first == std::string_view::npos || text[first] == '#';
}

/// Reads one line at a time into room for the longest, so that an endless one costs no more.
class LineReader {
 public:
  explicit LineReader(std::istream& in) : m_in(in), m_room(kLongestLine + 1) {}

  /// Nothing at the end of the input.
  Result<std::optional<std::string_view>> next() {
    const std::string place = fmt::format("line {}", ++m_number);
    m_in.getline(m_room.data(), static_cast<std::streamsize>(m_room.size()));
    const auto count = static_cast<std::size_t>(m_in.gcount());
    if (m_in.bad())
      return fail(ErrorCode::Storage, place, "", "the input could not be read to its end",
                  "look where it comes from");
    if (m_in.fail() && count == kLongestLine)
      return fail(ErrorCode::OutOfRange, place, "", "this line is longer than 1 MiB",
                  "write one entry a line");
    if (m_in.fail()) return std::optional<std::string_view>();
    return std::optional(std::string_view(m_room.data(), m_in.eof() ? count : count - 1));
  }

  int number() const { return m_number; }

 private:
  std::istream& m_in;
  std::vector<char> m_room;
  int m_number = 0;
};

/// Whoever waits for a receipt that does not come would enter the line again: so nothing follows it.
Result<void> answer(const Receipt& receipt, int number, std::ostream& out) {
  out << (receipt.already ? "already " : "signed ") << receipt.sequence << " " << receipt.hash << std::endl;
  if (out) return {};
  return fail(ErrorCode::Storage, fmt::format("line {}", number), "",
              "it was entered, but its receipt could not be written; no line after it was entered",
              "look where the output goes, and enter the same lines again: nothing is doubled");
}

Result<void> enterAll(Shop& shop, const Id& job, std::istream& lines, const std::string& source,
                      std::ostream& out) {
  CW_TRY(answered, enterLines(shop, job, lines, out));
  if (answered > 0) return {};
  return fail(ErrorCode::InvalidInput, source, "", "there is no entry in it, so nothing was entered",
              "write one JSON object a line");
}

}  // namespace

Result<int> enterLines(Shop& shop, const Id& job, std::istream& lines, std::ostream& out) {
  int answered = 0;
  LineReader reader(lines);
  while (true) {
    CW_TRY(text, reader.next());
    if (!text) return answered;
    if (isBlank(*text)) continue;
    CW_TRY(receipt, enterLine(shop, job, *text, reader.number()));
    CW_CHECK(answer(receipt, reader.number(), out));
    ++answered;
  }
}

Result<Reply> enterLines(const std::string& jobText, const std::string& file, const Options& options,
                         Terminal& terminal) {
  CW_TRY(job, Id::parse(jobText));
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  if (file == "-") {
    CW_CHECK(enterAll(*shop, job, terminal.in, "standard input", terminal.out));
    return Reply{};
  }
  std::ifstream lines(file, std::ios::binary);  // once: what comes through a pipe cannot be read again
  if (!lines) CW_CHECK(readFile(file));         // says what is wrong with the path
  CW_CHECK(enterAll(*shop, job, lines, file, terminal.out));
  return Reply{};
}

}  // namespace cw
