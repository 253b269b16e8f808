#include "app/bench/job_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <limits>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/look/labels.h"
#include "app/look/style.h"
#include "app/run/touch.h"
#include "core/report/describe.h"

namespace cw {

JobList::JobList(Workspace& workspace, QWidget* parent) : QWidget(parent), m_workspace(workspace) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(16);
  QLabel* title =
      textLabel(tr("Jobs on the bench"), fontOfHeight(bench::kTextHeight * 1.2, this, QFont::Bold));
  column->addWidget(title);
  m_empty = new QLabel;
  m_empty->setObjectName(QStringLiteral("emptyText"));
  m_empty->setFont(fontOfHeight(bench::kTextHeight, this));
  m_empty->setWordWrap(true);
  column->addWidget(m_empty);
  m_said = textLabel({}, fontOfHeight(bench::kLabelHeight, this));
  m_said->setObjectName(QStringLiteral("listSaidText"));
  column->addWidget(m_said);
  m_list = new QListWidget;
  m_list->setObjectName(QStringLiteral("jobList"));
  m_list->setAccessibleName(tr("Jobs in progress"));
  m_list->setFont(fontOfHeight(bench::kTextHeight, this));
  fitRowsForTouch(*m_list);
  column->addWidget(m_list, 100);
  column->addStretch(1);
  auto* foot = new QHBoxLayout;
  foot->setSpacing(touchGap(*this));
  m_open = new QPushButton(tr("Go on with this job"));
  m_start = new QPushButton(tr("Start a job"));
  m_open->setObjectName(QStringLiteral("openJobButton"));
  m_start->setObjectName(QStringLiteral("startJobButton"));
  m_quick = new QPushButton(tr("Quick joint"));
  m_quick->setObjectName(QStringLiteral("quickJointButton"));
  m_quick->setToolTip(tr("Tighten one joint that has no issued sheet"));
  foot->addWidget(m_start);
  foot->addWidget(m_quick);
  foot->addStretch(1);
  foot->addWidget(m_open);
  for (QPushButton* button : {m_open, m_start, m_quick}) {
    button->setFont(fontOfHeight(bench::kTextHeight, this));
    button->setMinimumHeight(static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  }
  column->addLayout(foot);
  auto* note = new QLabel(
      tr("The maker's manual, local codes and licensed practice come before anything this program shows."));
  note->setObjectName(QStringLiteral("deferenceText"));
  note->setFont(fontOfHeight(bench::kLabelHeight, this));
  note->setForegroundRole(QPalette::PlaceholderText);
  note->setWordWrap(true);
  column->addWidget(note);
  connect(m_list, &QListWidget::itemActivated, this, &JobList::choose);
  connect(m_open, &QPushButton::clicked, this, &JobList::choose);
  connect(m_start, &QPushButton::clicked, this, &JobList::startWanted);
  connect(m_quick, &QPushButton::clicked, this, &JobList::quickWanted);
  passFocusOn(*this, *m_list);
}

void JobList::refresh() {
  m_list->clear();
  m_jobs.clear();
  say({});
  for (QPushButton* button : {m_open, m_start, m_quick}) button->setEnabled(m_workspace.hasShop());
  m_list->setVisible(m_workspace.hasShop());
  if (!m_workspace.hasShop()) {
    m_empty->setText(tr("No shop file is open. Open or make one in Settings."));
    return m_empty->show();
  }
  JobQuery unfinished;
  unfinished.states = {JobState::Open};
  unfinished.most = std::numeric_limits<int>::max();  // each waits for somebody
  auto rows = m_workspace.shop().findJobs(unfinished);
  if (!rows) {
    m_empty->setText(worded(rows.error()));
    return m_empty->show();
  }
  for (const JobRow& row : rows->rows) {
    const QString sheet = row.quick ? tr("%1 (no issued sheet)").arg(toQt(row.title))
                                    : tr("%1 rev %2").arg(toQt(row.title), toQt(row.revision));
    m_list->addItem(tr("%1   %2   %3\nstarted %4, %5 entries")
                        .arg(toQt(row.workOrder), toQt(row.machine), sheet, toQt(timeText(row.started)),
                             QString::number(row.entries)));
    m_jobs.push_back(row.job);
  }
  m_empty->setVisible(rows->rows.empty());
  m_empty->setText(tr("No job is in progress. Start one by an issued sheet."));
  m_list->setVisible(!rows->rows.empty());
  m_open->setEnabled(!rows->rows.empty());
  m_open->setProperty(kMainProperty, !rows->rows.empty());
  m_start->setProperty(kMainProperty, rows->rows.empty());
  passFocusOn(*this, rows->rows.empty() ? static_cast<QWidget&>(*m_start) : *m_list);
  if (!rows->rows.empty()) m_list->setCurrentRow(0);
}

void JobList::say(const QString& sentence) {
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

void JobList::choose() {
  const int row = m_list->currentRow();
  if (row >= 0 && row < static_cast<int>(m_jobs.size()))
    emit jobChosen(m_jobs[static_cast<std::size_t>(row)]);
}

}  // namespace cw
