#include "app/window/style.h"

#include "app/widgets/shades.h"

#include <QApplication>
#include <QPainter>
#include <QSettings>
#include <QStyleOption>

namespace laneward {

QPalette readablePalette(QPalette palette) {
    for (auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        const QColor text = palette.color(group, QPalette::HighlightedText);
        palette.setColor(group, QPalette::Highlight, readable(palette.color(group, QPalette::Highlight), text, textContrast));
        const QColor ground = palette.color(group, QPalette::Base);
        const double ratio = group == QPalette::Disabled ? markContrast : textContrast;
        palette.setColor(group, QPalette::PlaceholderText,
                         readable(mixed(palette.color(group, QPalette::Text), ground, 0.35), ground, ratio));
    }
    return palette;
}

// A named base, not QApplication::style(): the proxy must not wrap itself when the size changes.
LanewardStyle::LanewardStyle(TargetSize size) : QProxyStyle(QStringLiteral("fusion")), m_least(int(size)) {}

void LanewardStyle::polish(QPalette& palette) {
    QProxyStyle::polish(palette);
    palette = readablePalette(palette);
}

int LanewardStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int stock = QProxyStyle::pixelMetric(metric, option, widget);
    switch (metric) {
        case PM_IndicatorHeight:
        case PM_IndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
            return qMax(stock, m_least * 2 / 3);
        case PM_HeaderMargin:
        case PM_FocusFrameHMargin:
            return qMax(stock, 5);  // air between the columns of a list
        case PM_ScrollBarExtent:
            return qMax(stock, m_least * 2 / 3);
        default:
            return stock;
    }
}

namespace {

/// The stock edges are a darker shade of the window: hard to see on grey and invisible on black.
void drawEdge(const QStyleOption& option, QPainter& painter) {
    const QColor window = option.palette.color(QPalette::Window);
    const bool enabled = option.state & QStyle::State_Enabled;
    const bool focused = option.state & QStyle::State_HasFocus;
    const QColor wanted =
        focused ? option.palette.color(QPalette::Highlight) : mixed(window, option.palette.color(QPalette::WindowText), 0.35);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(enabled ? readable(wanted, window, markContrast) : wanted, focused ? 2 : 1));
    painter.drawRoundedRect(QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
    painter.restore();
}

}  // namespace

void LanewardStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
    const bool flat = button && (button->features & QStyleOptionButton::Flat);
    const bool edged = element == PE_FrameLineEdit || element == PE_PanelButtonCommand || element == PE_IndicatorCheckBox;
    if (edged && !flat) drawEdge(*option, *painter);
}

void LanewardStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                       const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_ComboBox || control == CC_SpinBox) drawEdge(*option, *painter);
}

QSize LanewardStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                      const QWidget* widget) const {
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
        case CT_PushButton:
        case CT_ToolButton:
        case CT_CheckBox:
        case CT_RadioButton:
        case CT_ComboBox:
        case CT_LineEdit:
        case CT_SpinBox:
        case CT_MenuItem:
        case CT_MenuBarItem:
        case CT_ItemViewItem:
        case CT_HeaderSection:
        case CT_TabBarTab:
            result.setHeight(qMax(result.height(), m_least));
            break;
        default:
            break;
    }
    return result;
}

void applyStyle(TargetSize size) { QApplication::setStyle(new LanewardStyle(size)); }

TargetSize keptTargetSize() { return QSettings().value("window/shop").toBool() ? TargetSize::Shop : TargetSize::Usual; }

void keepTargetSize(TargetSize size) { QSettings().setValue("window/shop", size == TargetSize::Shop); }

}  // namespace laneward
