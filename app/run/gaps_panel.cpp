#include "app/run/gaps_panel.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/run/course.h"
#include "app/run/leads_word.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {

GapsPanel::GapsPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("gapsText"));
  m_value = addField(tr("Gap between the faces, a number or with its unit"), QStringLiteral("gapField"));
  m_taken = addText(QStringLiteral("gapsTaken"));
  m_word = addLeadsWord(tr("Let be by (sign of a shop lead), if it cannot be brought even"),
                        tr("Reason, in a few words"));
  m_back = addButton(tr("Take the last one back"), QStringLiteral("takeBackButton"));
  column()->addStretch(1);
  connect(m_back, &QPushButton::clicked, this, &GapsPanel::takeBack);
}

void GapsPanel::present(const BenchView& view) {
  m_wanted = *view.joint()->passes.gaps;
  m_unit = m_wanted.mostDifference.unit;
  m_gaps.clear();
  m_word->present(Given::HereOrByPhone);
  showGaps();
}

void GapsPanel::showGaps() {
  const bool uneven = complete() && !even(m_gaps, m_wanted);
  m_value->clear();
  const QString most = toQt(text(m_wanted.mostDifference));
  if (uneven)
    m_text->setText(
        tr("The gaps differ by %1, more than %2. Bring the faces even at the widest gap, then read "
           "again all round.")
            .arg(differenceText(), most));
  else if (complete())
    m_text->setText(tr("The gaps differ by %1; at most %2.").arg(differenceText(), most));
  else
    m_text->setText(tr("Measure at %1 places, going round. Widest less narrowest: at most %2. Now place %3.")
                        .arg(m_wanted.places)
                        .arg(most)
                        .arg(m_gaps.size() + 1));
  QStringList taken;
  for (const StatedLength& gap : m_gaps)
    taken << tr("%1:\u00a0%2").arg(taken.size() + 1).arg(toQt(text(gap)));
  m_taken->setText(taken.join(QStringLiteral("    ")));
  m_taken->setVisible(!taken.isEmpty());
  m_back->setVisible(!taken.isEmpty());
  setShown(m_value, !complete());
  m_word->setVisible(uneven);
  if (!complete() && isVisible()) m_value->setFocus();
  emit changed();
}

QString GapsPanel::differenceText() const {
  return toQt(text(differenceOf(m_gaps), *m_gaps.front().unit));
}

Result<StatedLength> GapsPanel::typed() const {
  const std::string words = fromQt(m_value->text().trimmed());
  if (const auto number = parseNumber(words, Settings().decimalMark())) return StatedLength{*number, m_unit};
  return parse<LengthTag>(words, Settings().decimalMark());
}

QString GapsPanel::mainAction() const {
  if (complete()) {
    if (even(m_gaps, m_wanted)) return tr("Sign %1 gaps").arg(m_gaps.size());
    return m_word->sign().isEmpty() ? tr("Sign: uneven, to be read again")
                                    : tr("Go on with %1's word").arg(m_word->sign());
  }
  if (m_value->text().trimmed().isEmpty())
    return tr("Type gap %1 of %2").arg(m_gaps.size() + 1).arg(m_wanted.places);
  const auto gap = typed();
  return tr("Gap %1 is %2").arg(m_gaps.size() + 1).arg(gap ? toQt(text(*gap)) : m_value->text().trimmed());
}

bool GapsPanel::isReady() const {
  return complete() || !m_value->text().trimmed().isEmpty();
}

void GapsPanel::act() {
  if (!complete()) return take();
  GapsRead read;
  read.gaps = m_gaps;
  read.allowedBy = fromQt(m_word->sign());
  read.reason = m_word->reason();
  course().stateAllowed(m_word->given(), read);
}

void GapsPanel::take() {
  const auto gap = typed();
  if (!gap) return emit course().refused(worded(gap.error()));
  m_unit = gap->unit;
  m_gaps.push_back(*gap);
  showGaps();
}

void GapsPanel::takeBack() {
  m_gaps.pop_back();
  showGaps();
}

}  // namespace cw
