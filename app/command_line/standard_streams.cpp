#include "app/command_line/standard_streams.h"

#include <fcntl.h>
#include <unistd.h>

#include <csignal>

namespace cw {

void holdStandardStreams() {
  for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
    if (fcntl(stream, F_GETFD) == -1) open("/dev/null", O_RDONLY);  // takes the lowest free number: this one
  std::signal(SIGPIPE, SIG_IGN);
}

bool outputIsScreen() {
  return isatty(STDOUT_FILENO) == 1;
}

}  // namespace cw
