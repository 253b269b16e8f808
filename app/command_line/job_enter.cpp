#include "app/command_line/job_enter.h"

#include <fmt/format.h>

#include <fstream>
#include <istream>
#include <ostream>

#include "app/command_line/open_shop.h"
#include "core/record/draft.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr std::size_t kLongestLine = 1 << 20;

Result<Receipt> enterLine(Shop& shop, const Id& job, std::string_view text, int number) {
  CW_TRY(line, readDraftLine(text, number, job));
  const std::string place = fmt::format("line {}", number);
  if (std::holds_alternative<SignedIn>(line.draft.body)) {
    if (!line.pin)
      return fail(ErrorCode::InvalidInput, place + ".pin", "", "the PIN is missing", R"(write "pin":"…")");
    auto receipt = shop.ledger().signIn(job, line.draft.enteredBy, *line.pin, line.draft.id);
    return receipt ? receipt : fail(within(place, receipt.error()));
  }
  auto receipt = shop.ledger().append(job, line.draft, line.pin);
  return receipt ? receipt : fail(within(place, receipt.error()));
}

bool isBlank(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r");
  return first == std::string_view::npos || text[first] == '#';
}

}  // namespace

Result<int> enterLines(Shop& shop, const Id& job, std::istream& lines, std::ostream& out) {
  int answered = 0;
  std::string text;
  for (int number = 1; std::getline(lines, text); ++number) {
    if (isBlank(text)) continue;
    if (text.size() > kLongestLine)
      return fail(ErrorCode::OutOfRange, fmt::format("line {}", number), "", "this line is too long",
                  "write one entry a line");
    CW_TRY(receipt, enterLine(shop, job, text, number));
    out << (receipt.already ? "already " : "signed ") << receipt.sequence << " " << receipt.hash << std::endl;
    ++answered;
  }
  return answered;
}

Result<Reply> enterLines(const std::string& jobText, const std::string& file, const Options& options,
                         Terminal& terminal) {
  CW_TRY(job, Id::parse(jobText));
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  if (file == "-") {
    CW_CHECK(enterLines(*shop, job, terminal.in, terminal.out));
    return Reply{};
  }
  CW_CHECK(readFile(file));  // says what is wrong with the path
  std::ifstream lines(file, std::ios::binary);
  CW_CHECK(enterLines(*shop, job, lines, terminal.out));
  return Reply{};
}

}  // namespace cw
