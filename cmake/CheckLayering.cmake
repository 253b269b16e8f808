cmake_minimum_required(VERSION 3.25)
# A test: reads every #include of core and app below ROOT and refuses one that points up or sideways, Qt below
# the store, matrix algebra outside settling, and SQL outside the store. The table is the house as DEVELOPERS.md
# draws it; tests/layering holds what it must see.
set(allowed_core_base "")
set(allowed_core_units core/base)
set(allowed_core_fastener core/units)
set(allowed_core_pattern core/units)
set(allowed_core_shop core/units)
set(allowed_core_joint core/fastener core/pattern core/shop)
set(allowed_core_procedure core/joint)
set(allowed_core_record core/procedure)
set(allowed_core_settling core/joint)
set(allowed_core_report core/record core/settling)
set(allowed_core_store core/report)
set(allowed_app_look core/joint)
set(allowed_app_common app/look core/store)
set(allowed_app_fields app/common)
set(allowed_app_drawing app/common)
set(allowed_app_documents app/fields app/drawing)
set(allowed_app_layout app/documents)
set(allowed_app_print app/documents)
set(allowed_app_pdf core/base)
set(allowed_app_run app/print)
foreach(place bench sheets records library crib figures)
  set(allowed_app_${place} app/run app/layout)
endforeach()
set(allowed_app_command_line app/print app/pdf)
set(allowed_app_shell app/bench app/sheets app/records app/library app/crib app/figures)
set(allowed_app_main app/shell app/command_line)

# Headers that a room may not include though it may use the room they are in, and why.
set(forbidden_app_run app/common/workspace.h)  # the run states everything through its course

# Everything a room may reach, through the rooms it may use.
function(reachable room out)
  set(seen ${room})
  set(todo ${room})
  while(todo)
    list(POP_FRONT todo next)
    string(REPLACE "/" "_" key ${next})
    foreach(below ${allowed_${key}})
      if(NOT below IN_LIST seen)
        list(APPEND seen ${below})
        list(APPEND todo ${below})
      endif()
    endforeach()
  endwhile()
  set(${out} ${seen} PARENT_SCOPE)
endfunction()

# A file's code: without comments, with lines that go on joined, and blanks where a character would part a list.
function(code_of file out)
  file(READ ${ROOT}/${file} text)
  string(REGEX REPLACE "[][;]" " " text "${text}")
  string(REGEX REPLACE "\\\\\r?\n" "" text "${text}")
  string(REGEX REPLACE "/\\*([^*]|\\*+[^*/])*\\*+/" " " text "${text}")
  string(REGEX REPLACE "(^|\n)[ \t]*//[^\n]*" "\\1" text "${text}")
  string(REGEX REPLACE "//[^\n\"]*" "" text "${text}")  # after code; one with a quote could be an address in a text
  set(${out} "${text}" PARENT_SCOPE)
endfunction()

# The path below ROOT that an include means, as a compiler finds it; somebody else's header keeps its name.
function(meant_by written file out)
  string(REGEX REPLACE "[<>\"]" "" name "${written}")
  cmake_path(GET file PARENT_PATH folder)
  set(beside ${ROOT}/${folder}/${name})
  if(written MATCHES "^\"" AND (name MATCHES "^\\." OR EXISTS ${beside}))
    set(path ${beside})
  else()
    cmake_path(ABSOLUTE_PATH name BASE_DIRECTORY ${ROOT} OUTPUT_VARIABLE path)
  endif()
  cmake_path(SET path NORMALIZE ${path})
  cmake_path(RELATIVE_PATH path BASE_DIRECTORY ${ROOT})
  set(${out} ${path} PARENT_SCOPE)
endfunction()

# How statements of SQL begin in a string, once the code is in capitals, all gaps are one blank, raw strings and
# strings in pieces are one plain string each, and what is said to the user has gone.
set(word "[A-Z_.%0-9]+")
set(statements
  "SELECT \""
  "SELECT ((DISTINCT|ALL) )?[^ \",]+( ?, ?[^ \",]+)* FROM "
  "SELECT [^ \",]+( ?, ?[^ \",]+)+ ?,? ?\""
  "SELECT [^\"]*[*?=()|][^\"]* FROM "
  "[^\"]*\\( ?SELECT [^\"]* FROM "
  "SELECT [0-9A-Z_]*[*?(]"
  "(INSERT|REPLACE) (OR [A-Z]+ )?INTO (\"|${word} ?\\([^)]*\"|${word} ?(\\([^)\"]*\\) ?)?(VALUES|SELECT|DEFAULT VALUES))"
  "UPDATE (\"|(OR [A-Z]+ )?${word} SET (\"|${word} ?=))"
  "DELETE FROM (${word} ?)?(\"|WHERE )"
  "PRAGMA (\"|${word} ?[=(\"])"
  "(CREATE|ALTER|DROP) ((TEMP|TEMPORARY|UNIQUE|VIRTUAL) )?(TABLE|INDEX|VIEW|TRIGGER) "
  "BEGIN (IMMEDIATE|EXCLUSIVE|DEFERRED|TRANSACTION)"
  "WITH (RECURSIVE )?${word} ?(\\([^)]*\\) ?)?AS ?\\("
  "ATTACH DATABASE "
  "VACUUM( INTO|\")")

# Whether there is one in the code.
function(has_statement code out)
  string(REGEX REPLACE "R\"[^(\"\n]*\\(" "\"" code "${code}")
  string(REGEX REPLACE "\"[ \t\n]*(u8|[uUL])?\"" "" code "${code}")
  string(REGEX REPLACE "((^|[^A-Za-z_])tr|CW_TEXT|QT_TR[A-Z_]*)[ \t\n]*\\([ \t\n]*(\"[^\"]*\"[ \t\n]*,[ \t\n]*)?\"[^\"]*\"" "" code "${code}")
  string(REGEX REPLACE "([ \t\n]|\\\\[nrt])+" " " code "${code}")
  string(TOUPPER "${code}" code)
  set(${out} FALSE PARENT_SCOPE)
  foreach(statement ${statements})
    if(code MATCHES "\"[ (]*${statement}")
      set(${out} TRUE PARENT_SCOPE)
      return()
    endif()
  endforeach()
endfunction()

set(slips 0)
macro(slip file problem)
  message("${file}: ${problem}")
  math(EXPR slips "${slips} + 1")
endmacro()

set(forms "")
foreach(place core app)
  foreach(ending h hpp hxx inl inc c cc cpp cxx)
    list(APPEND forms ${ROOT}/${place}/*.${ending})
  endforeach()
endforeach()
file(GLOB_RECURSE files RELATIVE ${ROOT} ${forms})
foreach(file ${files})
  string(REGEX MATCH "^(core|app)/[a-z_]+" room ${file})
  string(REPLACE "/" "_" key "${room}")
  if(NOT DEFINED allowed_${key})
    slip(${file} "${room} has no row in the table of cmake/CheckLayering.cmake")
    continue()
  endif()
  reachable(${room} rooms)
  code_of(${file} code)
  string(REGEX MATCHALL "(^|\n)[ \t]*(#|%:)[ \t]*(include|include_next|import)[^A-Za-z_][^\n]*" includes "${code}")
  foreach(line ${includes})
    if(NOT line MATCHES "(include|include_next|import)[ \t]*(<[^>]*>|\"[^\"]*\")")
      slip(${file} "an include that names no header cannot be checked")
      continue()
    endif()
    set(written "${CMAKE_MATCH_2}")
    meant_by("${written}" ${file} path)
    if(path MATCHES "^((core|app)/[a-z_]+|tests)/" AND NOT CMAKE_MATCH_1 IN_LIST rooms)
      slip(${file} "${room} may not include ${CMAKE_MATCH_1}")
    elseif(path IN_LIST forbidden_${key})
      slip(${file} "${room} may not include ${path}")
    elseif(path MATCHES "^(Q[A-Za-z]|q[a-z]+\\.h)" AND file MATCHES "^core/" AND NOT room STREQUAL core/store)
      slip(${file} "Qt below core/store")
    elseif(path MATCHES "^(unsupported/)?Eigen/" AND NOT room STREQUAL core/settling)
      slip(${file} "matrix algebra outside core/settling")
    endif()
  endforeach()
  if(NOT room STREQUAL core/store)
    has_statement("${code}" found)
    if(found OR code MATCHES "QSql|QtSql|sqlite3(_|\\.h)")
      slip(${file} "SQL outside core/store")
    endif()
  endif()
endforeach()
if(slips GREATER 0)
  message(FATAL_ERROR "${slips} slips against the house's order")
endif()
