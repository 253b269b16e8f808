# One place for every switch of a build. Defaults suit a developer.
option(CW_BUILD_TESTS "Build the tests and benchmarks" ON)
option(CW_WERROR "Warnings are errors" ON)
option(CW_FUZZ "Build the libFuzzer targets (needs clang)" OFF)
set(CW_FUZZ_RUNS 500 CACHE STRING "Inputs that each libFuzzer test tries")
set(CW_SANITIZE "" CACHE STRING "Sanitizers as a list for -fsanitize, e.g. address,undefined")

if(NOT CMAKE_BUILD_TYPE)
  set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "Build type" FORCE)
endif()

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/bin)

find_program(CW_CCACHE ccache)
if(CW_CCACHE)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env CCACHE_SLOPPINESS=pch_defines,time_macros ${CW_CCACHE})
endif()

add_library(cw_options INTERFACE)
target_include_directories(cw_options INTERFACE ${CMAKE_SOURCE_DIR})
target_compile_options(cw_options INTERFACE
  -Wall -Wextra -Wpedantic -Wnon-virtual-dtor -Wold-style-cast -Wcast-align -Woverloaded-virtual
  -Wconversion -Wdouble-promotion -Wformat=2 -Wimplicit-fallthrough
  # g++ would have a local type not named like one that another file of the same batch keeps to itself.
  $<IF:$<CXX_COMPILER_ID:GNU>,-Wshadow=local,-Wshadow>
  $<$<CXX_COMPILER_ID:GNU>:-fpch-preprocess> $<$<BOOL:${CW_WERROR}>:-Werror>)
# A precompiled header that knows no times is the same in every tree, and so is what ccache keeps of it.
target_compile_options(cw_options INTERFACE "$<$<CXX_COMPILER_ID:Clang>:SHELL:-Xclang -fno-pch-timestamp>")
# g++ 12 reports std::string's own copying once it is inlined (GCC bugs 105329, 105651); debug builds warn.
target_compile_options(cw_options INTERFACE
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<NOT:$<CONFIG:Debug>>>:-Wno-array-bounds;-Wno-stringop-overflow;-Wno-stringop-overread;-Wno-restrict>)
if(CW_SANITIZE)
  target_compile_options(cw_options INTERFACE -fsanitize=${CW_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
  target_link_options(cw_options INTERFACE -fsanitize=${CW_SANITIZE})
endif()
