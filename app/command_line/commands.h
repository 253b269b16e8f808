#pragma once
#include "app/command_line/command_line.h"

namespace cw {

// Each adds one command, or one family of commands, in the file named after it.
void addConvert(Commands& commands);
void addThread(Commands& commands);
void addClamp(Commands& commands);
void addGuard(Commands& commands);
void addRecondition(Commands& commands);
void addSetting(Commands& commands);
void addStrip(Commands& commands);
void addOrder(Commands& commands);
void addSettle(Commands& commands);
void addShop(Commands& commands);
void addKey(Commands& commands);
void addSheet(Commands& commands);
void addJob(Commands& commands);
void addRecord(Commands& commands);
void addDemo(Commands& commands);
void addBackup(Commands& commands);
void addInspect(Commands& commands);
void addLibrary(Commands& commands);

}  // namespace cw
