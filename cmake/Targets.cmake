# A folder is a target's source list: adding a file needs no change here.

# cw_library(name FOLDERS a b … LINKS x y …): one static library from all .cpp below the folders.
function(cw_library name)
  cmake_parse_arguments(arg "" "" "FOLDERS;LINKS" ${ARGN})
  set(sources)
  foreach(folder ${arg_FOLDERS})
    file(GLOB_RECURSE found CONFIGURE_DEPENDS ${folder}/*.cpp ${folder}/*.h)
    list(APPEND sources ${found})
  endforeach()
  add_library(${name} STATIC ${sources})
  target_link_libraries(${name} PUBLIC cw_options ${arg_LINKS})
endfunction()

# cw_test(name FOLDERS f g … LINKS x y …): one GoogleTest program from all files in the folders, run as one test
# with WORDS.
function(cw_test name)
  cmake_parse_arguments(arg "" "TIMEOUT" "FOLDERS;LINKS;LABELS;WORDS" ${ARGN})
  list(TRANSFORM arg_FOLDERS APPEND /*.cpp)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${arg_FOLDERS})
  if(NOT sources)
    return()
  endif()
  if(NOT arg_TIMEOUT)
    set(arg_TIMEOUT 600)
  endif()
  add_executable(${name} ${sources})
  target_link_libraries(${name} PRIVATE ${arg_LINKS})
  target_compile_definitions(${name} PRIVATE
    CW_SOURCE="${CMAKE_SOURCE_DIR}"
    CW_TEST_DATA="${CMAKE_SOURCE_DIR}/tests/data" CW_RESOURCES="${CMAKE_SOURCE_DIR}/resources"
    CW_PICTURES="${CMAKE_BINARY_DIR}/pictures")
  add_test(NAME ${name} COMMAND ${name} ${arg_WORDS})
  set_tests_properties(${name} PROPERTIES TIMEOUT ${arg_TIMEOUT} LABELS "${arg_LABELS}")
endfunction()

# cw_fuzz(name LINKS x y …): fuzz_<name>.cpp over the files in corpus/<name>, as the test corpus_<name> of every
# build and, with CW_FUZZ, as the libFuzzer program fuzz_<name>. What that finds goes to <build>/found/<name>.
function(cw_fuzz name)
  cmake_parse_arguments(arg "" "" "LINKS" ${ARGN})
  set(corpus ${CMAKE_CURRENT_SOURCE_DIR}/corpus/${name})
  add_executable(corpus_${name} fuzz_${name}.cpp corpus_test.cpp)
  target_link_libraries(corpus_${name} PRIVATE ${arg_LINKS} cw_test_support GTest::gmock_main)
  target_compile_definitions(corpus_${name} PRIVATE CW_CORPUS="${corpus}")
  add_test(NAME corpus_${name} COMMAND corpus_${name})
  set_tests_properties(corpus_${name} PROPERTIES LABELS fuzz TIMEOUT 300)
  if(CW_FUZZ)
    set(found ${CMAKE_BINARY_DIR}/found/${name})
    file(MAKE_DIRECTORY ${found})
    add_executable(fuzz_${name} fuzz_${name}.cpp)
    target_link_libraries(fuzz_${name} PRIVATE ${arg_LINKS} cw_test_support -fsanitize=fuzzer)
    add_test(NAME fuzz_${name}
      COMMAND fuzz_${name} -seed=1 -runs=${CW_FUZZ_RUNS} -timeout=10 -max_len=4096 -print_final_stats=1
              -artifact_prefix=${found}/ ${found} ${corpus})
    set_tests_properties(fuzz_${name} PROPERTIES LABELS fuzz TIMEOUT 3600)
  endif()
endfunction()

# cw_benchmark(name SOURCES a b … LINKS x y …): a plain program that prints measurements; no test runs it.
function(cw_benchmark name)
  cmake_parse_arguments(arg "" "" "SOURCES;LINKS" ${ARGN})
  add_executable(${name} EXCLUDE_FROM_ALL ${arg_SOURCES})
  target_link_libraries(${name} PRIVATE ${arg_LINKS})
endfunction()
