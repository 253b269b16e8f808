#include "app/figures/convert_page.h"

#include <QCoreApplication>

#include "app/common/quantity_field.h"
#include "app/figures/figure_page.h"
#include "core/report/figures.h"

namespace cw {
namespace {

class ConvertPage final : public FigurePage {
  Q_DECLARE_TR_FUNCTIONS(ConvertPage)

 public:
  explicit ConvertPage(FigureDesk& desk)
      : FigurePage(desk, tr("Convert"), tr("One torque in every unit, by exact factors.")),
        m_torque(add(new TorqueField({QStringLiteral("torque"), tr("Torque as stated"), tr("30 N·m")}))) {}

 private:
  Result<Outcome> compute() const override {
    CW_TRY(torque, m_torque->stated());
    return convertedTorque(torque);
  }

  TorqueField* m_torque;
};

}  // namespace

QWidget* makeConvertPage(FigureDesk& desk, QWidget*) {
  return new ConvertPage(desk);
}

}  // namespace cw
