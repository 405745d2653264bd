namespace Loadmark.Circuits.Devices;

/// <summary>Current and slope of a load that is on. The bent part below the floor is explained at <see cref="LoadDevice"/>.</summary>
internal static class LoadCurve
{
    /// <summary>Current at a voltage, and its slope.</summary>
    /// <param name="law">How it draws.</param>
    /// <param name="draw">A, W or Ω.</param>
    /// <param name="floor">Voltage below which the law is bent, V.</param>
    /// <param name="volts">Voltage across it, V.</param>
    public static (double Amps, double Siemens) At(LoadLaw law, double draw, double floor, double volts)
    {
        var share = volts / floor;
        switch (law)
        {
            case LoadLaw.Resistance:
                return (volts / draw, 1 / draw);
            case LoadLaw.Current:
                if (share >= 1)
                    return (draw, 0);
                return share > 0
                    ? (draw * share * (2 - share), draw * 2 * (1 - share) / floor)
                    : (2 * draw * share, 2 * draw / floor);
            default:
                if (share >= 1)
                    return (draw / volts, -draw / (volts * volts));
                var amps = draw / floor;
                return share > 0
                    ? (amps * share * (3 - (2 * share)), amps * (3 - (4 * share)) / floor)
                    : (3 * amps * share, 3 * amps / floor);
        }
    }
}
