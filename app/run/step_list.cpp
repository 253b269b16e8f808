#include "app/run/step_list.h"

#include <QEvent>
#include <QPainter>
#include <QScrollBar>

#include "app/common/wording.h"
#include "app/look/colours.h"
#include "app/look/measures.h"

namespace cw {
enum class StepMark { ToDo, Now, Done, SetAside, NotApplicable, NotRecorded, Deviated, SecondPerson };

struct StepLine {
  int number = 0;
  QString text;
  StepMark mark = StepMark::ToDo;
};

namespace {

StepMark markOf(const Job& job, std::size_t index, bool now) {
  if (now) return StepMark::Now;
  switch (job.steps[index].state) {
    case StepState::Done:
      return StepMark::Done;
    case StepState::SetAside:
      return StepMark::SetAside;
    case StepState::Blank:
      return job.steps[index].absence == Absence::NotRecorded ? StepMark::NotRecorded
                                                              : StepMark::NotApplicable;
    case StepState::Deviated:
      return StepMark::Deviated;
    case StepState::Open:
      break;
  }
  return job.sheet.steps[index].kind == StepKind::Hold ? StepMark::SecondPerson : StepMark::ToDo;
}

/// Neither done as the sheet says nor to be done: the word stands with the mark.
bool isOtherwise(StepMark mark) {
  return mark == StepMark::SetAside || mark == StepMark::NotApplicable || mark == StepMark::NotRecorded ||
         mark == StepMark::Deviated;
}

QString wordOf(StepMark mark) {
  switch (mark) {
    case StepMark::ToDo:
      return StepList::tr("to do");
    case StepMark::Now:
      return StepList::tr("now");
    case StepMark::Done:
      return StepList::tr("done");
    case StepMark::SetAside:
      return StepList::tr("left for later");
    case StepMark::Deviated:
      return StepList::tr("done otherwise");
    case StepMark::NotApplicable:
      return StepList::tr("does not apply");
    case StepMark::NotRecorded:
      return StepList::tr("not recorded");
    case StepMark::SecondPerson:
      return StepList::tr("second person, to do");
  }
  return {};
}

}  // namespace

class StepList::Canvas final : public QWidget {
 public:
  explicit Canvas(QWidget* parent) : QWidget(parent) { setFont(fontOfHeight(bench::kLabelHeight, this)); }

  void setLines(std::vector<StepLine> lines) {
    m_lines = std::move(lines);
    QStringList spoken;
    for (const StepLine& line : m_lines)
      spoken << QStringLiteral("%1 %2, %3").arg(QString::number(line.number), line.text, wordOf(line.mark));
    setAccessibleName(spoken.join(QStringLiteral("; ")));
    relayout();
    update();
  }
  double rowHeight() const { return pixels(bench::kTarget * 0.8, this) * benchScale(); }
  std::size_t count() const { return m_lines.size(); }
  QRectF rowOf(std::size_t line) const {
    const double top = line == 0 ? 4 : m_bottoms[line - 1];
    return {0, top, static_cast<double>(width()), m_bottoms[line] - top};
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < m_lines.size(); ++i) draw(painter, m_lines[i], rowOf(i));
  }
  void resizeEvent(QResizeEvent*) override { relayout(); }
  void changeEvent(QEvent* event) override {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) relayout();
  }

 private:
  static constexpr qreal kLeft = 16;
  static constexpr int kFlow = Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap;

  static QString textOf(const StepLine& line) {
    const QString text = QStringLiteral("%1  %2").arg(line.number).arg(line.text);
    return isOtherwise(line.mark) ? text + QLatin1Char('\n') + wordOf(line.mark) : text;
  }
  QRectF textIn(const QRectF& row) const { return row.adjusted(kLeft + rowHeight() * 0.64 + 10, 0, -8, 0); }

  QFont fontOf(QFont::Weight weight) const {
    QFont out = font();
    out.setWeight(weight);
    return out;
  }

  /// Each row is as high as its text needs: a step's words are never cut.
  void relayout() {
    const QFontMetricsF metrics(fontOf(QFont::Bold));
    m_bottoms.clear();
    double bottom = 4;
    for (const StepLine& line : m_lines) {
      const QRectF room = textIn(QRectF(0, 0, width(), 10000));
      bottom += std::max(rowHeight(), metrics.boundingRect(room, kFlow, textOf(line)).height() + 10);
      m_bottoms.push_back(bottom);
    }
    setMinimumHeight(static_cast<int>(bottom) + 8);
  }

  void draw(QPainter& painter, const StepLine& line, const QRectF& row) {
    const double radius = rowHeight() * 0.32;
    const QPointF centre(kLeft + radius, row.center().y());
    drawMark(painter, line, centre, radius);
    const bool strong = line.mark == StepMark::Now;
    painter.setFont(fontOf(strong ? QFont::Bold : QFont::Normal));
    painter.setPen(strong || line.mark == StepMark::Done ? inkOf(palette()) : secondInkOf(palette()));
    painter.drawText(textIn(row), kFlow, textOf(line));
  }

  void drawMark(QPainter& painter, const StepLine& line, const QPointF& centre, double radius) {
    const bool filled = line.mark == StepMark::Done || line.mark == StepMark::Now;
    const QColor colour = line.mark == StepMark::Now ? accentOf(palette()) : inkOf(palette());
    painter.setPen(QPen(filled                   ? colour
                        : isOtherwise(line.mark) ? warningOf(palette())
                                                 : lineOf(palette()),
                        2));
    painter.setBrush(filled ? colour : Qt::transparent);
    const QRectF box(centre - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    if (line.mark == StepMark::SecondPerson)
      painter.drawRoundedRect(box, 3, 3);
    else if (isOtherwise(line.mark))
      painter.drawPolygon(
          QPolygonF{{centre - QPointF(0, radius * 1.15), centre + QPointF(radius * 1.15, 0),
                     centre + QPointF(0, radius * 1.15), centre - QPointF(radius * 1.15, 0)}});
    else
      painter.drawEllipse(box);
    drawSign(painter, line.mark, centre, radius, box);
  }

  void drawSign(QPainter& painter, StepMark mark, const QPointF& centre, double radius, const QRectF& box) {
    painter.setPen(QPen(groundOf(palette()), 2));
    if (mark == StepMark::Done)
      painter.drawPolyline(
          QPolygonF{{centre + QPointF(-0.45, 0) * radius, centre + QPointF(-0.1, 0.35) * radius,
                     centre + QPointF(0.5, -0.4) * radius}});
    if (mark == StepMark::Now) {
      painter.setBrush(groundOf(palette()));
      painter.drawPolygon(
          QPolygonF{{centre + QPointF(-0.25, -0.4) * radius, centre + QPointF(0.45, 0) * radius,
                     centre + QPointF(-0.25, 0.4) * radius}});
    }
    painter.setPen(QPen(inkOf(palette()), 2));
    const QPointF half(radius * 0.45, 0), apart(0, radius * 0.2);
    if (mark == StepMark::NotApplicable || mark == StepMark::NotRecorded)
      painter.drawLine(centre - half, centre + half);
    if (mark == StepMark::Deviated) {
      painter.drawLine(centre - half - apart, centre + half - apart);
      painter.drawLine(centre - half + apart, centre + half + apart);
    }
    if (mark == StepMark::SecondPerson) {
      painter.setFont(font());
      painter.drawText(box, Qt::AlignCenter, QStringLiteral("2"));
    }
  }

  std::vector<StepLine> m_lines;
  std::vector<double> m_bottoms;
};

StepList::StepList(QWidget* parent) : QScrollArea(parent), m_canvas(new Canvas(this)) {
  setWidget(m_canvas);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  viewport()->setAutoFillBackground(false);
  m_canvas->setAutoFillBackground(false);
}

void StepList::present(const Job& job, const Next& next) {
  std::vector<StepLine> lines;
  for (std::size_t i = 0; i < job.steps.size(); ++i) {
    const bool now = !job.finished && !job.paused && next.stage != Stage::Finish && i == next.step;
    const Step& step = job.sheet.steps[i];
    const Joint* joint = job.sheet.joint(step.joint);
    lines.push_back({static_cast<int>(i) + 1, joint != nullptr ? toQt(joint->name) : toQt(step.text),
                     markOf(job, i, now)});
  }
  m_canvas->setLines(std::move(lines));
  m_now = next.step;
  revealNow();
}

/// The step that is now stands in view, with those around it.
void StepList::revealNow() {
  m_canvas->resize(viewport()->width(),
                   m_canvas->minimumHeight());  // so that there is somewhere to scroll to
  if (m_now >= m_canvas->count()) return;
  const QRectF row = m_canvas->rowOf(m_now);
  ensureVisible(0, static_cast<int>(row.center().y()), 0, static_cast<int>(row.height() * 1.5));
}

void StepList::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  revealNow();
}

}  // namespace cw
