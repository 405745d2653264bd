namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Powers, in watts and in volt-amperes.</content>
internal sealed partial class FigureCollector
{
    /// <summary>A power was read, or several: in watts, in volt-amperes, or in both.</summary>
    public void AddWatts(ReadOnlySpan<PrintedFigure> watts)
    {
        if (TakesMains())
        {
            var mains = Mains ??= new FigureGroup();
            foreach (var figure in watts)
            {
                if (figure.IsApparent)
                    mains.VoltAmps ??= figure;
                else
                    mains.Watts ??= figure;
            }

            return;
        }

        if (_open >= 0 && _groups[_open] is { WattsFirst: true } first && (watts[0].IsApparent ? first.VoltAmps : first.Watts) is not null)
            _open = -1;
        if (_open < 0)
            OpenGroup(new FigureGroup { WattsFirst = true, Side = _side, Outlet = Outlet, VoltsLost = _voltsLost });

        for (var i = _open; i < _groups.Count; i++)
        {
            foreach (var figure in watts)
                AddWatts(_groups[i], figure);
        }
    }

    private void AddVoltAmps(FigureGroup group, PrintedFigure power)
    {
        group.VoltAmps ??= power;
        if (power.Doubtful || group.VoltAmps is not { } before || before.Low != power.Low || before.High != power.High)
            Reject(power.Place);
        if (power.Doubtful && group.VoltAmps == power)
            group.VoltAmps = null;
    }

    private void AddWatts(FigureGroup group, PrintedFigure watts)
    {
        if (watts.IsApparent)
        {
            AddVoltAmps(group, watts);
            return;
        }

        if (group.Watts is not { } before)
        {
            if (group.WattsDisputed)
                DisputedWatts = Dispute(DisputedWatts, null, watts);
            else
                group.Watts = watts;
        }
        else if (before.Low != watts.Low || before.High != watts.High)
        {
            group.Watts = null;
            group.WattsDisputed = true;
            DisputedWatts = Dispute(DisputedWatts, before, watts);
        }
    }
}
