// All steps of the evening in one column, each with its mark: done, left out, now, to come. Shape and word, not colour alone.
#pragma once

#include "core/documents/guide.h"
#include "core/documents/wording.h"

#include <QListWidget>

namespace laneward {

class GuideList : public QListWidget {
    Q_OBJECT

public:
    explicit GuideList(QWidget* parent = nullptr);

    /// `now`: row of the step that is shown; done steps come first.
    void show(const Guide& guide, const JobSheet& sheet, int now, const Speech& speech);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void add(const QString& mark, const QString& word, const QString& line);
};

}  // namespace laneward
