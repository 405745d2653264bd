namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Words beside which a figure is not of the low-voltage supply.</content>
internal static partial class LabelWords
{
    /// <summary>Which figures beside a word are of something else; none for most words.</summary>
    public static ForeignFigures ForeignTo(ReadOnlySpan<char> word) => word switch
    {
        "rf" or "ghz" or "mhz" or "radio" or "transmit" or "transmitter" or "tx" or "erp" or "eirp" or "headphone" or "headphones"
            or "earphone" or "speaker" or "speakers" or "loudspeaker" or "amplifier" or "into" or "audio" or "kopfhörer"
            or "casque" => ForeignFigures.SignalPower,
        "signal" or "line" or "cv" or "expression" or "vpp" or "vp" or "impedance" or "headroom" or "dbu" or "dbv" =>
            ForeignFigures.SignalVoltage,
        "ht" or "anode" or "cathode" or "heater" or "heaters" or "filament" or "filaments" or "phantom" or "hochspannung"
            or "anodenspannung" or "heizung" => ForeignFigures.Inside,
        "plate" or "internal" or "internally" or "danger" or "lethal" or "caution" or "warning" or "vorsicht" or "achtung" =>
            ForeignFigures.Danger,
        "cell" or "cells" or "aa" or "aaa" or "lipo" or "li" or "ion" or "lithium" or "nimh" or "coin" => ForeignFigures.Cell,
        _ => ForeignFigures.None,
    };
}
