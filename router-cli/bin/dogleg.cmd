@echo off
rem Starts Dogleg; builds it first where that has not been done. Written for Windows, not run there yet: see README.md.
setlocal
for %%I in ("%~dp0..\..") do set "PROJECT=%%~fI"
set "JAR=%PROJECT%\router-cli\target\router-cli.jar"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
  echo dogleg: Java 17 or newer is needed: install a JDK. 1>&2
  exit /b 1
)
if exist "%JAR%" goto run
where mvn >nul 2>nul
if errorlevel 1 (
  echo dogleg: Maven is needed to build: install it. 1>&2
  exit /b 1
)
echo dogleg: first start: building Dogleg. Downloads about 65 MB of libraries and build tools, once ... 1>&2
pushd "%PROJECT%"
call mvn -q -B -Ddogleg.run -Dmaven.test.skip=true -pl router-cli -am package
if errorlevel 1 (
  popd
  exit /b 1
)
popd
:run
chcp 65001 >nul
rem As in the file dogleg: classes of a first run are kept beside the build, so that later starts take half as long.
rem An archive that another Java or another build made is passed over by Java itself.
set "BUILT=%PROJECT%\router-cli\target"
set "CLASSES=%BUILT%\dogleg.jsa"
if "%~1"=="fit" set "CLASSES=%BUILT%\dogleg-fit.jsa"
if "%~1"=="late" set "CLASSES=%BUILT%\dogleg-late.jsa"
if "%~1"=="openings" set "CLASSES=%BUILT%\dogleg-openings.jsa"
set "OPTIONS=-Xshare:auto -Xlog:disable -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData"
set "OPTIONS=%OPTIONS% -XX:+UnlockDiagnosticVMOptions -XX:+IgnoreUnrecognizedVMOptions -XX:ArchiveRelocationMode=0"
set "LIST=%BUILT%\dogleg-%RANDOM%%RANDOM%.list"
if exist "%CLASSES%" goto quick
for %%C in (demo plan fit late openings) do if "%~1"=="%%C" goto first
if exist "%BUILT%\dogleg.jsa" set "CLASSES=%BUILT%\dogleg.jsa"
if exist "%CLASSES%" goto quick
"%JAVA%" %OPTIONS% "-Ddogleg.project=%PROJECT%" "-Ddogleg.typed=%~0" -jar "%JAR%" %*
exit /b %ERRORLEVEL%
:quick
"%JAVA%" %OPTIONS% "-XX:SharedArchiveFile=%CLASSES%" "-Ddogleg.project=%PROJECT%" "-Ddogleg.typed=%~0" -jar "%JAR%" %*
exit /b %ERRORLEVEL%
:first
"%JAVA%" %OPTIONS% "-XX:DumpLoadedClassList=%LIST%" "-Ddogleg.project=%PROJECT%" "-Ddogleg.typed=%~0" -jar "%JAR%" %*
set "CODE=%ERRORLEVEL%"
rem A run that stopped early has seen too few classes.
set "WHOLE="
for %%C in (0 4 5 6) do if "%CODE%"=="%%C" set "WHOLE=yes"
if defined WHOLE "%JAVA%" -Xshare:dump -Xlog:disable "-XX:SharedClassListFile=%LIST%" "-XX:SharedArchiveFile=%LIST%.jsa" -jar "%JAR%" >nul 2>nul && move /y "%LIST%.jsa" "%CLASSES%" >nul 2>nul
if exist "%LIST%.jsa" del /f "%LIST%.jsa" >nul 2>nul
if exist "%LIST%" del "%LIST%" >nul 2>nul
exit /b %CODE%
