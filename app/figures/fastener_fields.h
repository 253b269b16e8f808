#pragma once
#include "app/fields/name_field.h"
#include "app/fields/quantity_field.h"
#include "core/joint/guard.h"

namespace cw {

class FigureDesk;

// Fields that ask the desk's catalogue, each time anew. Their names are those under which Figures remembers.

NameField* threadField(const FigureDesk& desk, bool optional = false);
NameField* gradeField(const FigureDesk& desk, bool optional = false);
/// A condition of the catalogue, or one's own nut factor or friction; of a specification also "not stated".
enum class ConditionOf { Specification, Parts };
NameField* conditionField(const FigureDesk& desk, const char* name, const QString& label, ConditionOf what,
                          bool optional = false);
NameField* faceField(const FigureDesk& desk);
NameField* materialField(const FigureDesk& desk, bool optional = false);

// What stands in them; the error's place is the field's name.

Result<Thread> threadIn(const FigureDesk& desk, const NameField& field);
Result<std::optional<Grade>> gradeIn(const FigureDesk& desk, const NameField& field, const Thread& thread);
/// Nothing if it is empty or not stated.
Result<std::optional<Condition>> conditionIn(const FigureDesk& desk, const NameField& field);
Result<std::optional<BearingFace>> faceIn(const FigureDesk& desk, const NameField& field,
                                          const Thread& thread);
Result<std::optional<TappedMaterial>> materialIn(const FigureDesk& desk, const NameField& field);

}  // namespace cw
