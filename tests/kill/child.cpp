#include "tests/kill/child.h"

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <stdexcept>
#include <utility>

namespace cw::test {

Child::Child(const std::string& program, std::vector<std::string> words) {
  int ends[2];
  if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
  words.insert(words.begin(), program);
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  m_process = ::fork();
  if (m_process == 0) {
    ::dup2(ends[1], STDOUT_FILENO);
    ::close(ends[0]), ::close(ends[1]);
    ::execv(program.c_str(), pointers.data());
    ::_exit(127);
  }
  ::close(ends[1]);
  m_lines = ::fdopen(ends[0], "r");
}

Child::~Child() {
  if (m_process > 0) kill(), wait();
  ::fclose(m_lines);
}

std::optional<std::string> Child::line() {
  std::string out;
  for (int c = ::fgetc(m_lines); c != EOF; c = ::fgetc(m_lines)) {
    if (c == '\n') return out;
    out += static_cast<char>(c);
  }
  return std::nullopt;
}

void Child::kill() {
  ::kill(m_process, SIGKILL);
}

bool Child::wait() {
  int status = 0;
  ::waitpid(std::exchange(m_process, -1), &status, 0);
  return WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
}

}  // namespace cw::test
