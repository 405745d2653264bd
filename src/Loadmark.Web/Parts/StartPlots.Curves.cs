using Loadmark.Drawing.Plots;
using Loadmark.Drawing.Scenes;
using Loadmark.Simulation.Starting;

namespace Loadmark.Web.Parts;

/// <content>The curves.</content>
public sealed partial class StartPlots
{
    private const int MostLines = 6;
    private const int PlotHeight = 220;

    private PlotAxis TimeAxis => new(T["time after switch-on"], "s") { Low = _from, High = _to };

    private Scene DrawAmps(int width)
    {
        var outlet = Fed.Find(outlet => outlet.Outlet.ToString() == _outlet);
        var marks = new List<PlotMark>();
        if (outlet?.Limit is { } limit)
        {
            marks.Add(new PlotMark(T["limit"], (double)limit.Value));
            marks.Add(new PlotMark(T["headroom begins"], (double)(limit.Value * (1 - Answer.Rig.HeadroomInForce))));
        }

        return PlotDrawing.Draw(new Plot
        {
            Title = T["Current of {0}", _outlet],
            X = TimeAxis,
            Y = new PlotAxis(T["current"], "A"),
            Width = width,
            Height = PlotHeight,
            Lines = Answer.AmpsOf(_outlet) is { } amps ? [Line(_outlet, amps)] : [],
            Marks = [.. marks],
            Cursor = _cursor,
        });
    }

    private Scene DrawVolts(int width)
    {
        var marks = Loads.Select(load => (load, Answer.ThresholdsOf(load))).Where(static entry => entry.Item2 is not null)
            .SelectMany(entry => new[]
            {
                (Name: "starts from", entry.load, At: entry.Item2!.Value.Starts),
                (Name: "drops out below", entry.load, At: entry.Item2.Value.Stops),
            })
            .Where(static mark => mark.At > 0)
            .GroupBy(static mark => (mark.Name, mark.At))
            .Select(
                group => new PlotMark(
                    Loads.Count == 1
                        ? T[group.Key.Name].Value
                        : $"{T[group.Key.Name]}: " + (group.Count() == Loads.Count
                            ? T["all"].Value
                            : string.Join(", ", group.Select(static mark => mark.load))),
                    group.Key.At));
        return PlotDrawing.Draw(new Plot
        {
            Title = T["Voltage at the loads of {0}", _outlet],
            X = TimeAxis,
            Y = new PlotAxis(T["voltage"], "V"),
            Width = width,
            Height = PlotHeight,
            Lines = [.. Loads.Take(MostLines)
                .Select(load => (load, Answer.VoltsOf(load)))
                .Where(static entry => entry.Item2 is not null)
                .Select(entry => Line(entry.load, entry.Item2!))],
            Marks = [.. marks],
            Cursor = _cursor,
        });
    }

    private PlotLine Line(string name, Waveform series)
    {
        var times = Answer.Result.Waveforms.Seconds;
        return new PlotLine(
            name,
            [.. Enumerable.Range(0, times.Length)
                .Where(index => times[index] >= _from && times[index] <= _to)
                .Select(index => new PlotValue(times[index], series.Values[index]))]);
    }
}
