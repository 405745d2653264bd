using Loadmark.Web.RequestIds;
using Microsoft.Extensions.Logging;

namespace Loadmark.Web.Tests.RequestIds;

/// <summary>Ids that find a request or a page in the log.</summary>
public sealed class RequestIdTests
{
    [Fact]
    public async Task No_two_are_alike_and_each_can_be_read_out()
    {
        var marks = new RequestIdSource(TimeProvider.System);
        var ids = await Task.WhenAll(Enumerable.Range(0, 1000).Select(_ => Task.Run(marks.Next)));
        Assert.Distinct(ids);
        Assert.All(ids, static id => Assert.Matches("^[0-9A-HJKMNP-TV-Z]{6,8}-[0-9A-HJKMNP-TV-Z]{1,3}$", id));
    }

    [Fact]
    public void A_page_has_the_id_that_it_was_opened_with_or_one_of_its_own()
    {
        var mark = new PageRequestId(new RequestIdSource(TimeProvider.System));
        var own = mark.Id;
        Assert.NotEmpty(own);
        Assert.Equal(own, mark.Id);
        mark.Id = "ABC-1";
        Assert.Equal(KeyValuePair.Create<string, object?>("id", "ABC-1"), Assert.Single(mark));
        Assert.Equal("id:ABC-1", mark.ToString());
    }

    [Fact]
    public async Task What_is_logged_while_a_page_asks_for_something_carries_its_id()
    {
        var mark = new PageRequestId(new RequestIdSource(TimeProvider.System)) { Id = "before" };
        var log = new ScopeLog();
        string? seen = null;
        await new PageRequestIdHandler(mark, log).CreateInboundActivityHandler(_ =>
        {
            mark.Id = "ABC-1"; // as the page learns it while it is opened
            seen = (Assert.Single(log.Scopes) as IReadOnlyList<KeyValuePair<string, object?>>)?[0].Value as string;
            return Task.CompletedTask;
        })(null!);
        Assert.Equal("ABC-1", seen);
        Assert.Empty(log.Scopes);
    }

    private sealed class ScopeLog : ILogger<PageRequestIdHandler>, IDisposable
    {
        public List<object> Scopes { get; } = [];

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull
        {
            Scopes.Add(state);
            return this;
        }

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            // Only scopes are looked at.
        }

        public void Dispose() => Scopes.Clear();
    }
}
