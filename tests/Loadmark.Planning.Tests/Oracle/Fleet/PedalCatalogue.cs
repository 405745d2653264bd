namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>The sorts of load of an invented hire workshop. The figures are invented within what such loads draw.</summary>
internal static class PedalCatalogue
{
    public static IReadOnlyList<PedalType> All { get; } =
    [
        new("OD", "analog drive", 9, 12), new("OD", "analog drive", 9, 8), new("OD", "analog overdrive", 9, 15), new("OD", "analog drive", 9, 20),
        new("OD", "analog drive", 9, 6) { High = 18 }, new("DS", "analog distortion", 9, 9), new("DS", "analog distortion", 9, 18), new("DS", "analog distortion", 9, 26),
        new("FZ", "analog fuzz", 9, 3), new("FZ", "analog fuzz", 9, 4) { IsCentrePositive = true, IsGroundPositive = true, Weight = 1 },
        new("FZ", "analog fuzz", 9, 5) { IsCentrePositive = true, Weight = 1 }, new("BO", "analog boost", 9, 7), new("BO", "analog boost", 9, 11) { High = 18 },
        new("BF", "analog buffer", 9, 5), new("BF", "analog buffer", 9, 10), new("CP", "analog compressor", 9, 8), new("CP", "analog compressor", 9, 14),
        new("CP", "analog compressor", 9, 30) { High = 12, Weight = 3 }, new("PR", "analog preamp", 9, 22), new("PR", "analog preamp", 9, 28),
        new("PR", "analog preamp", 18, 60) { Weight = 3 }, new("PR", "analog preamp", 18, 35) { Weight = 3 }, new("PR", "analog preamp", 12, 80) { Weight = 2 },
        new("DI", "analog preamp", 9, 20), new("DI", "analog buffer", 9, 16) { Isolate = true, Weight = 2 }, new("EQ", "analog preamp", 9, 24), new("EQ", "analog preamp", 18, 45) { Weight = 2 },
        new("CH", "analog modulation", 9, 45), new("CH", "analog modulation", 9, 30), new("PH", "analog modulation", 9, 25), new("PH", "analog modulation", 9, 38),
        new("TR", "analog modulation", 9, 20), new("TR", "analog modulation", 9, 32), new("FL", "analog modulation", 9, 55), new("FL", "analog modulation", 9, 70) { Isolate = true, Weight = 2 },
        new("VB", "analog modulation", 9, 40), new("WA", "analog modulation", 9, 22), new("AD", "analog delay", 9, 48), new("AD", "complex analog delay", 9, 80),
        new("RO", "complex analog modulation", 12, 90) { Weight = 2 }, new("OC", "analog modulation", 9, 28), new("SY", "complex analog modulation", 9, 85) { Weight = 3 },
        new("TU", "digital tuner", 9, 30) { StartPercent = 150, StartTenths = 2, Weight = 9 }, new("TU", "digital tuner", 9, 45) { Weight = 6 },
        new("DL", "digital delay", 9, 100) { StartPercent = 140, StartTenths = 8 }, new("DL", "digital delay", 9, 150), new("DL", "digital delay", 9, 200) { StartPercent = 180, StartTenths = 12 },
        new("DL", "digital delay", 9, 300) { StartPercent = 170, StartTenths = 15, Isolate = true }, new("RV", "digital reverb", 9, 120) { StartPercent = 160, StartTenths = 10 },
        new("RV", "digital reverb", 9, 250) { StartPercent = 150, StartTenths = 15 }, new("RV", "digital reverb", 9, 350) { StartPercent = 130, StartTenths = 20, Weight = 4 },
        new("LP", "digital looper", 9, 180) { StartPercent = 140, StartTenths = 10 }, new("LP", "digital looper", 9, 400) { StartPercent = 120, StartTenths = 10, Weight = 3 },
        new("PT", "digital modulation", 9, 135), new("PT", "digital", 9, 220) { InWatts = true, Weight = 2 }, new("MX", "large digital", 9, 500) { StartPercent = 120, StartTenths = 20, Weight = 3 },
        new("MX", "large digital", 12, 450) { StartPercent = 130, StartTenths = 25, Weight = 1 }, new("MX", "digital", 9, 240) { High = 12, InWatts = true, Weight = 1 },
        new("WR", "digital receiver", 12, 280) { High = 15, StartPercent = 125, StartTenths = 5, Weight = 3 }, new("WR", "digital receiver", 9, 160) { High = 12, StartPercent = 120, StartTenths = 5, Weight = 3 },
        new("VP", "valve preamp", 12, 375) { InWatts = true, Weight = 1 }, new("VP", "valve preamp", 12, 300) { HasWidePin = true, Weight = 1 },
        new("VD", "analog delay", 9, 500) { IsAlternating = true, Weight = 1 }, new("SW", "odd thing", 9, 40) { Weight = 2 },
    ];
}
