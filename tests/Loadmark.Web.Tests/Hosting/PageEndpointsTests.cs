using System.Reflection;
using System.Text;
using Loadmark.Web.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Loadmark.Web.Tests.Hosting;

/// <summary>Files that the page hands out.</summary>
public sealed class PageEndpointsTests : PageTest
{
    [Theory]
    [InlineData("Pier Theatre", "pier-theatre")]
    [InlineData("  Pit board, bass chair! ", "pit-board-bass-chair")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("C:\\x\r\nSet-Cookie: a", "c-x-set-cookie-a")]
    [InlineData("音", "rig")]
    [InlineData("...", "rig")]
    [InlineData("Ärger", "rger")]
    public async Task A_rig_is_handed_out_under_a_name_that_every_system_takes(string name, string stem)
    {
        var kept = await Store.AddAsync(name, SmallRig.Text, Stop);
        var (file, headers) = await GetAsync("ExportAsync", kept.Id);
        Assert.Equal($"{stem}.rig.yaml", file!.FileDownloadName);
        Assert.Equal("application/yaml", file.ContentType);
        Assert.Equal(SmallRig.Text, Encoding.UTF8.GetString(file.FileContents.Span));
        Assert.Equal("no-store", headers["Cache-Control"]);
        Assert.Equal("pier-theatre.loads.csv", (await GetAsync("ExportLoadsAsync", kept.Id)).File!.FileDownloadName);
    }

    [Fact]
    public async Task A_long_name_is_cut()
    {
        var kept = await Store.AddAsync(new string('a', 200), SmallRig.Text, Stop);
        Assert.Equal(new string('a', 60) + ".rig.yaml", (await GetAsync("ExportAsync", kept.Id)).File!.FileDownloadName);
    }

    [Fact]
    public async Task Loads_as_a_table_hold_no_formula()
    {
        var kept = await Store.AddAsync("r", "rig: r\nloads:\n  \"=1+1\": { label: \"@SUM(A1)\" }\n", Stop);
        var text = Encoding.UTF8.GetString((await GetAsync("ExportLoadsAsync", kept.Id)).File!.FileContents.Span);
        Assert.StartsWith("\uFEFF", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("(^|,|\n)\"?[=@+-]", text.TrimStart('\uFEFF'));
        Assert.Contains("=1+1", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_there_is_not_found()
    {
        Assert.Null((await GetAsync("ExportAsync", Guid.NewGuid())).File);
        var unread = await Store.AddAsync("r", "rig: [", Stop);
        Assert.NotNull((await GetAsync("ExportAsync", unread.Id)).File); // what cannot be read is the user's all the same
        Assert.Null((await GetAsync("ExportLoadsAsync", unread.Id)).File);
    }

    private async Task<(FileContentHttpResult? File, IHeaderDictionary Headers)> GetAsync(string handler, Guid id)
    {
        var context = new DefaultHttpContext();
        var method = typeof(PageEndpoints).GetMethod(handler, BindingFlags.NonPublic | BindingFlags.Static)!;
        var result = await (Task<IResult>)method.Invoke(null, [.. method.GetParameters().Select(asked => new object[] { id, Store, Cache, context }.First(asked.ParameterType.IsInstanceOfType))])!;
        if (result is not FileContentHttpResult)
            Assert.IsType<NotFound>(result);
        return (result as FileContentHttpResult, context.Response.Headers);
    }
}
