#pragma once
#include "app/figures/fastener_fields.h"
#include "app/figures/figure_page.h"

namespace cw {

/// A page whose torque belongs to a fastener: the guard's word stands below the torque at once.
class FastenerPage : public FigurePage {
 protected:
  using FigurePage::FigurePage;

  /// What the guard is told; no thread, no word.
  virtual Result<std::optional<GuardSubject>> subject() const = 0;
  void remarkInputs() override;

  TorqueField* m_torque = nullptr;  ///< the torque that is judged
};

/// The fields that most of these pages share, added in the order of the calls.
struct FastenerForm {
  const FigureDesk& desk;
  NameField* thread = nullptr;
  NameField* grade = nullptr;
  NameField* condition = nullptr;
  NameField* face = nullptr;
  NameField* material = nullptr;
  LengthField* engagement = nullptr;

  /// What stands in them; fields that were not added are not known.
  Result<GuardSubject> subject() const;
};

/// "4 %"
class TextField;
TextField* deviationField(bool optional);
Result<std::optional<double>> deviationIn(const TextField& field);

/// Nut factor or long form.
NameField* basisField();
std::optional<Basis> basisIn(const NameField& field);

}  // namespace cw
