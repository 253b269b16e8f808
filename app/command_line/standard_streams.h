#pragma once

namespace cw {

/// Takes the numbers of standard input, output and error that were closed, so that no file opened later gets
/// one of them and is written to as if it were the output; and lets writing to a pipe that nobody reads any
/// more fail instead of ending the program. To be called first of all.
void holdStandardStreams();

bool outputIsScreen();

}  // namespace cw
