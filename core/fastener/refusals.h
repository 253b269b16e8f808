#pragma once
#include "core/base/result.h"
#include "core/fastener/library.h"

namespace cw {

// The sentences of a catalogue that has not got what was asked for.

/// Names the threads of the same size, or the nearest names.
tl::unexpected<Error> noThread(std::string_view written, const Library& library);
tl::unexpected<Error> noGrade(std::string_view written, const Library& library);
tl::unexpected<Error> noCondition(std::string_view written, const Library& library);
tl::unexpected<Error> noMaterial(std::string_view written, const Library& library);

/// A metric thread with an inch grade, or the other way round.
tl::unexpected<Error> otherSystem(std::string_view written, const Grade& grade, const Thread& thread);

/// A grade that is made from `from` to `upTo` but not for this thread.
tl::unexpected<Error> notInThatSize(std::string_view written, const Grade& grade, const Thread& thread,
                                    Length from, Length upTo);

/// No head of that kind: names the sizes it has, or the kinds there are.
tl::unexpected<Error> noHead(std::string_view kind, const Thread& thread, const Library& library);

}  // namespace cw
