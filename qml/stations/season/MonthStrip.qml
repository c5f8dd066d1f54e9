// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the plan over its months: the range of what stands as a band with its middle, of what
// happens as a bar a month; a line where there is no more room.
import QtQuick
import ConelineWindow

Canvas {
    id: strip

    property var low: []
    property var middle: []
    property var high: []
    property bool happens: false
    property real capacity: -1
    property real highest: 1
    readonly property var colours: [Look.forecast, Look.ink, Look.rule, Look.lost]

    function py(value: real): real {
        return height - 3 - (height - 6) * value / Math.max(highest, 0.001);
    }
    function band(pen: var, months: int, wide: real) {
        pen.globalAlpha = 0.3;
        pen.beginPath();
        for (let i = 0; i < months; ++i)
            pen.lineTo((i + 0.5) * wide, py(high[i]));
        for (let i = months - 1; i >= 0; --i)
            pen.lineTo((i + 0.5) * wide, py(low[i]));
        pen.closePath();
        pen.fill();
        pen.globalAlpha = 1;
        pen.beginPath();
        for (let i = 0; i < months; ++i)
            pen.lineTo((i + 0.5) * wide, py(middle[i]));
        pen.stroke();
    }
    function bars(pen: var, months: int, wide: real) {
        for (let i = 0; i < months; ++i) {
            if (high[i] <= 0)
                continue;
            const top = py(high[i]);
            pen.globalAlpha = 0.3;
            pen.fillRect(i * wide + 1, top, wide - 2, Math.max(2, py(low[i]) - top));
            pen.globalAlpha = 1;
            pen.fillRect(i * wide + 1, py(middle[i]) - 1, wide - 2, 2);
        }
    }

    onColoursChanged: requestPaint()
    onLowChanged: requestPaint()
    onWidthChanged: requestPaint()
    onPaint: {
        const pen = getContext("2d");
        pen.reset();
        const months = strip.high.length;
        if (months === 0)
            return;
        const wide = width / months;
        pen.fillStyle = Look.rule;
        pen.fillRect(0, height - 3, width, 1);
        pen.fillStyle = Look.forecast;
        pen.strokeStyle = Look.forecast;
        pen.lineWidth = 2;
        if (strip.happens)
            strip.bars(pen, months, wide);
        else
            strip.band(pen, months, wide);
        if (strip.capacity >= 0) {
            pen.fillStyle = Look.lost;
            for (let x = 0; x < width; x += 10)
                pen.fillRect(x, py(strip.capacity), 6, 2);
        }
    }
}
