#include <iostream>

#include "app/command_line/command_line.h"
#include "app/command_line/standard_streams.h"
#include "app/shell/run_window.h"

int main(int count, char** words) {
  cw::holdStandardStreams();
  if (cw::asksForCommand(count, words))
    return cw::runCommandLine(count, words, {std::cout, std::cerr, std::cin, cw::outputIsScreen()});
  return cw::runWindow(count, words);
}
