cmake_minimum_required(VERSION 3.25)
# A test of cmake/CheckLayering.cmake: each slip below stands alone in a house of its own and must be refused with
# its file's name; what only looks like one must pass. SCRATCH is made anew.
set(wrong 0)

# The checker's answer to a house whose one file holds the text.
function(ask file text answer told)
  file(REMOVE_RECURSE ${SCRATCH})
  file(WRITE ${SCRATCH}/${file} "${text}\n")
  execute_process(COMMAND ${CMAKE_COMMAND} -DROOT=${SCRATCH} -P ${ROOT}/cmake/CheckLayering.cmake
    RESULT_VARIABLE result ERROR_VARIABLE words OUTPUT_QUIET)
  set(${answer} ${result} PARENT_SCOPE)
  set(${told} "${words}" PARENT_SCOPE)
endfunction()

function(refused file text)
  ask(${file} "${text}" answer told)
  if(answer EQUAL 0 OR NOT told MATCHES "${file}: ")
    message("passed, but is a slip: ${file}: ${text}")
    math(EXPR wrong "${wrong} + 1")
    set(wrong ${wrong} PARENT_SCOPE)
  endif()
endfunction()
function(passes file text)
  ask(${file} "${text}" answer told)
  if(NOT answer EQUAL 0)
    message("refused, but is none: ${file}: ${text}\n${told}")
    math(EXPR wrong "${wrong} + 1")
    set(wrong ${wrong} PARENT_SCOPE)
  endif()
endfunction()

# Up and sideways, in every form of include.
refused(core/joint/a.cpp [=[#include "core/record/job.h"]=])
refused(core/joint/a.h [=[#include <core/record/job.h>]=])
refused(core/joint/a.cpp [=[#include "../record/job.h"]=])
refused(core/joint/a.cpp [=[#include "core/base/../record/job.h"]=])
refused(core/joint/a.cpp [=[	# 	include	"core/record/job.h"]=])
refused(core/joint/a.cpp [=[#include"core/record/job.h"]=])
refused(core/joint/a.cpp [=[#/* why not */include /* this */ "core/record/job.h"]=])
refused(core/joint/a.cpp [=[/* first */ #include "core/record/job.h"]=])
refused(core/joint/a.cpp "#include \\\n  \"core/record/job.h\"")
refused(core/joint/a.cpp [=[%:include "core/record/job.h"]=])
refused(core/joint/a.cpp [=[#include_next "core/record/job.h"]=])
refused(core/joint/a.cpp "int a\;\n#include \"core/record/job.h\"  // for once")
refused(core/joint/a.cpp "#define HERE \"core/record/job.h\"\n#include HERE")
refused(core/joint/a.hpp [=[#include "core/record/job.h"]=])
refused(core/joint/a.cpp [=[#include "tests/support/need.h"]=])
refused(core/store/a.cpp [=[#include "app/common/wording.h"]=])
refused(core/nowhere/a.cpp [=[int a;]=])
refused(app/bench/a.cpp [=[#include "app/sheets/kept_sheet.h"]=])
refused(app/look/a.cpp [=[#include "app/common/settings.h"]=])
refused(app/drawing/a.cpp [=[#include "app/fields/text_field.h"]=])
refused(app/run/a.cpp [=[#include "app/bench/job_list.h"]=])
refused(app/run/a.cpp [=[#include "../common/workspace.h"]=])
passes(core/joint/a.cpp [=[#include "core/fastener/thread.h"]=])
passes(core/joint/a.cpp [=[#include "../fastener/thread.h"]=])
passes(core/joint/a.cpp [=[// #include "core/record/job.h"]=])
passes(core/joint/a.cpp [=[/* #include "core/record/job.h" */ int a;]=])
passes(core/joint/a.cpp [=[const char* text = "#include \"core/record/job.h\"";]=])
passes(app/run/a.cpp [=[#include "app/common/wording.h"]=])
passes(app/main.cpp [=[#include "app/shell/main_window.h"]=])

# Qt below the store, matrix algebra outside settling.
refused(core/report/a.cpp [=[#include <QString>]=])
refused(core/report/a.cpp [=[#  include <QtCore/QString>]=])
refused(core/report/a.cpp [=[#include "QString"]=])
refused(core/report/a.cpp [=[#include <qstring.h>]=])
refused(core/joint/a.cpp [=[#include <Eigen/Dense>]=])
passes(core/store/a.cpp [=[#include <QString>]=])
passes(core/settling/a.cpp [=[#include <Eigen/Dense>]=])

# SQL in any case and form of string.
foreach(statement
    [=["SELECT text FROM entry"]=]
    [=["select text from entry"]=]
    [=[" Select a, b from entry"]=]
    [=["select count(*) from entry"]=]
    [=["SELECT DISTINCT name AS n, max(id) FROM tool"]=]
    [=["SELECT 1 "  "FROM entry"]=]
    [=["select " + columns + " from entry"]=]
    [=["select id, name, " + more]=]
    [=["id in (select job from mention)"]=]
    [=[R"(SELECT text FROM entry)"]=]
    [=[R"sql( select id
        from entry )sql"]=]
    [=[u8"select id from entry"]=]
    [=[QStringLiteral("select id from entry")]=]
    [=["INSERT INTO entry VALUES (1)"]=]
    [=["insert or ignore into entry(id, text) values(?, ?)"]=]
    [=["replace into entry (id) select 1"]=]
    [=["insert into " + table]=]
    [=[" update tool set name = ?"]=]
    [=["UPDATE " + table]=]
    [=["delete from entry where id = ?"]=]
    [=["delete from entry"]=]
    [=["pragma journal_mode = delete"]=]
    [=["PRAGMA user_version"]=]
    [=["create unique index i on t(a)"]=]
    [=["drop table entry"]=]
    [=["begin immediate"]=]
    [=["with recursive n(x) as (select 1) select x from n"]=]
    [=["vacuum into 'x'"]=])
  refused(core/record/a.cpp "${statement}")
  refused(app/common/a.cpp "${statement}")
  passes(core/store/a.cpp "${statement}")
  passes(core/record/a.cpp "// ${statement}")
endforeach()
refused(app/common/a.cpp [=[#include <QSqlQuery>]=])
refused(app/common/a.cpp [=[#include <sqlite3.h>]=])
passes(app/common/a.cpp [=[tr("Select a, b from the list")]=])
passes(core/record/a.cpp [=["Select the wrench from the crib."]=])
passes(core/record/a.cpp [=["Update the sheet; set the wrench."]=])
passes(core/record/a.cpp [=["Insert into the bore by hand."]=])
passes(core/record/a.cpp [=["Delete takes away what is chosen."]=])
passes(core/record/a.cpp [=["begin with the longest screw"]=])
passes(core/record/a.cpp [=["with its unit, as (60 N·m)"]=])
passes(core/record/a.cpp [=[selectFrom(list); update(tool);]=])
passes(app/common/a.cpp [=[_Pragma("GCC diagnostic push")]=])

file(REMOVE_RECURSE ${SCRATCH})
if(wrong GREATER 0)
  message(FATAL_ERROR "the layering check is wrong ${wrong} times")
endif()
