using Loadmark.Hosting;
using Loadmark.Serving;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark</c> alone: opens the page.</summary>
internal sealed class PageCommand(Surroundings around)
{
    /// <summary>Serves the page until Ctrl-C.</summary>
    public int Run(Request.Page request)
    {
        var stop = around.Interruption();
        try
        {
            var trouble = PageServer.RunAsync(
                new PageOptions
                {
                    Folder = DataFolder.From(request.Data, around.Environment),
                    Port = request.Port ?? PageOptions.CommonPort,
                    OpensBrowser = request.OpensBrowser,
                    Log = request.Log,
                },
                around,
                stop).GetAwaiter().GetResult();
            if (trouble is not null)
                return new Complaints(around).Unusable(trouble);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // Ctrl-C while it was still beginning.
        }

        return ExitCode.Fine;
    }
}
