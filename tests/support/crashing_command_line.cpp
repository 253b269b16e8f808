// crashing_command_line UNSYNCED LINES CRASH-AT SEED WORDS…
// The program's command line, given WORDS, on a file system that crashes. Once it has answered LINES lines,
// it dies at its CRASH-AT-th write or sync; 0: not by itself. UNSYNCED and SEED: see fault_vfs.h.
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include "app/command_line/command_line.h"
#include "tests/support/fault_vfs.h"

namespace {

/// Standard output that counts what was flushed, line by line.
class CountingOutput : public std::stringbuf {
 public:
  CountingOutput(int lines, int crashAt) : m_linesLeft(lines), m_crashAt(crashAt) {}

 private:
  int sync() override {
    std::cout << str() << std::flush;
    str("");
    if (--m_linesLeft == 0) cw::test::crashAtOperation(m_crashAt);
    return 0;
  }

  int m_linesLeft, m_crashAt;
};

}  // namespace

int main(int count, char** words) {
  const auto number = [&](int index) { return std::stoi(words[index]); };
  cw::test::installFaultVfs(static_cast<cw::test::Unsynced>(number(1)), static_cast<unsigned>(number(4)));
  CountingOutput buffer(number(2), number(3));
  std::ostream out(&buffer);
  std::vector<const char*> rest(words + 4, words + count);
  rest[0] = "clampwright";
  const int code = cw::runCommandLine(count - 4, rest.data(), {out, std::cout, std::cin});
  out.flush();
  return code;
}
